import { html, type TemplateResult } from "lit/html.js";
import { type FieldValue } from "../../src/estimate/fields";
import { readField } from "../../src/estimate/job";
import { HostError } from "../../src/hosts/host";
import { type Entry } from "../../src/sheets/documents/entries";
import { Refusal } from "../../src/units/refusal";
import { type Context } from "../views/context";
import { fieldView } from "../views/field";

type Answers = Record<string, FieldValue>;

/** The entries of a document as the user types them, before it is written. */
export class Form {
  /** What the fields hold: values, or texts as they were typed. */
  private answers: Answers;

  constructor(
    private readonly entries: readonly Entry[],
    start: Readonly<Answers> = {},
    /** Tells its fields in the page from those of another form with the same entries. */
    private readonly name = "",
  ) {
    this.answers = Object.fromEntries(entries.map(({ key, default: usual }) => [key, start[key] ?? usual]));
  }

  /** The answers, each in its entry's unit. Refuses the first that cannot be read, by its label. */
  read(): Answers {
    return Object.fromEntries(
      this.entries.map((entry) => {
        const { value, problem } = this.reading(entry);
        if (problem !== undefined) throw new HostError(`${entry.label.en}: ${problem}`);
        return [entry.key, value];
      }),
    );
  }

  /** What its fields hold now, as it was typed. */
  typed = (): Answers => ({ ...this.answers });

  /** Puts values in the place of what was typed. */
  set(changes: Readonly<Answers>): void {
    this.answers = { ...this.answers, ...changes };
  }

  /** The fields, one below the other. */
  view(context: Context): TemplateResult {
    return html`${this.entries.map((entry) => {
      const { value, problem } = this.reading(entry);
      return fieldView({
        field: this.name ? { ...entry, key: `${this.name}-${entry.key}` } : entry,
        answer: this.answers[entry.key],
        good: value,
        problem,
        missing: false,
        answered: (typed) => {
          this.set({ [entry.key]: typed });
          context.changed();
        },
      });
    })}`;
  }

  private reading(entry: Entry): { value: FieldValue; problem?: string } {
    try {
      return { value: readField(entry, this.answers[entry.key]) };
    } catch (refusal) {
      if (!(refusal instanceof Refusal)) throw refusal;
      return { value: null, problem: refusal.message };
    }
  }
}
