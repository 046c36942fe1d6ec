import { type Archive } from "./archive";
import { losses } from "./messages";
import { type BookParts } from "./parts";

/** Counts of what could not be carried, by kind. */
export class Lost {
  private readonly counts = new Map<string, number>();

  add(kind: string, count = 1): void {
    if (count > 0) this.counts.set(kind, (this.counts.get(kind) ?? 0) + count);
  }

  /** A sentence for each kind. */
  sentences(): string[] {
    return Object.keys(losses).flatMap((kind) =>
      this.counts.has(kind) ? [losses[kind](this.counts.get(kind)!)] : [],
    );
  }
}

/** Kinds of parts that are left out, by where a file keeps them. */
const kinds: [string, RegExp][] = [
  ["charts", /^xl\/charts\/chart(?:ex)?\d+\.xml$/i],
  ["pictures", /^xl\/media\//],
  ["pivots", /^xl\/pivotTables\/[^/]+\.xml$/],
  ["tables", /^xl\/tables\/[^/]+\.xml$/],
  ["macros", /(?:^|\/)vbaProject\.bin$|^xl\/macrosheets\//],
  ["links", /^xl\/externalLinks\/[^/]+\.xml$/],
  ["threads", /^xl\/threadedComments\/[^/]+\.xml$/],
];

/** Elements of a sheet that are left out. */
const elements: [string, RegExp][] = [
  ["conditional", /<conditionalFormatting[\s>]/],
  ["protection", /<sheetProtection[\s/]/],
  ["filters", /<autoFilter[\s/]/],
  ["hyperlinks", /<hyperlinks[\s>]/],
];

/** Counts what the parts of a file hold that a workbook's content does not. */
export function countLosses(archive: Archive, book: BookParts): Lost {
  const lost = new Lost();
  for (const [kind, path] of kinds) lost.add(kind, archive.names.filter((name) => path.test(name)).length);
  const shapes = (name: string) => /^xl\/drawings\/drawing\d+\.xml$/.test(name) && /<(?:xdr:)?(?:sp|cxnSp|grpSp)[\s>]/.test(archive.text(name) ?? ""); // prettier-ignore
  lost.add("shapes", archive.names.filter(shapes).length);
  for (const [kind, element] of elements)
    lost.add(kind, book.sheets.filter(({ path }) => element.test(archive.text(path) ?? "")).length);
  lost.add("names", book.names);
  lost.add("chartSheets", book.chartSheets);
  lost.add("hidden", book.sheets.filter(({ hidden }) => hidden).length);
  lost.add("arrays", [...book.sheets].reduce((n, { path }) => n + (archive.text(path)?.match(/<f\s[^>]*\bt="array"/g)?.length ?? 0), 0)); // prettier-ignore
  return lost;
}
