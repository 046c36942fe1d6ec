import { HostError } from "../../src/hosts/host";
import { type EstimateSource } from "../../src/sheets/documents/source";
import { type Context } from "../views/context";
import { estimatesIn, readBook, sourcesIn, type Book } from "./book";

const say = {
  none: "Choose an estimate first: tick one or several above.",
};

/** What the documents' section knows: the workbook as last read, and the estimates that the user ticked. */
export class Desk {
  book?: Book;
  private ticked?: ReadonlySet<string>;
  private reading = false;

  /** The estimates that a document is written over; the one in the panel until others are ticked. */
  picked({ panel }: Context): string[] {
    const here = this.book ? estimatesIn(this.book) : [];
    const present = panel.state.source?.name;
    return here.filter((name) => (this.ticked ? this.ticked.has(name) : name === (present ?? here[0])));
  }

  /** Takes an estimate in, or out. */
  tick(context: Context, name: string, on: boolean): void {
    const others = this.picked(context).filter((one) => one !== name);
    this.ticked = new Set(on ? [...others, name] : others);
    context.changed();
  }

  /** Reads the workbook again where it has other sheets than when it was last read. */
  follow(context: Context): void {
    const { view } = context.panel.state;
    const known = this.book?.sheetNames.join("\n");
    if (this.reading || context.panel.busy || !view || known === view.sheetNames.join("\n")) return;
    this.reading = true;
    void this.read(context)
      .catch(() => undefined)
      .finally(() => {
        this.reading = false;
        context.changed();
      });
  }

  /** The workbook as it stands now. */
  async read({ host }: Context): Promise<Book> {
    return (this.book = await readBook(host));
  }

  /** The workbook and the ticked estimates as they stand now. Refuses where none is ticked or one cannot be used. */
  async sources(context: Context): Promise<{ book: Book; sources: EstimateSource[] }> {
    const book = await this.read(context);
    const picked = this.picked(context);
    if (picked.length === 0) throw new HostError(say.none);
    return { book, sources: sourcesIn(book, picked) };
  }
}
