import { type FieldValue } from "../../estimate/fields";
import { operate, when, type Expression, type Term } from "../expression";
import { businessEntries } from "./bid-entries";
import { type Entry } from "./entries";
import { columns, entryCell, entryRow, factRow, paragraphRow, type Row } from "./rows";
import { cellOf, type EstimateSource } from "./source";

type Answers = Readonly<Record<string, FieldValue>>;

/** A text of the estimate, blank where it is blank there. */
export const textIn = (source: EstimateSource, key: string): Expression => textOf(cellOf(source, key));

/** A cell's text, blank where it is blank. */
export const textOf = (cell: Expression): Expression => when(operate(cell, "=", ""), "", cell);

/** Who writes the letter: the business, below it what was said of it, and license and insurance under their names. */
export function businessRows(answers: Answers): Row[] {
  const [business, lines, ...named] = businessEntries;
  const says = ({ key }: Entry) => answers[key] ?? null;
  return [
    paragraphRow(business, says(business), { across: 3, style: "letterBusiness", height: 18 }),
    ...(says(lines) ? [paragraphRow(lines, says(lines), { style: "letterSmall" })] : []),
    ...named.filter(says).map((entry) => entryRow(entry, says(entry))),
  ];
}

/** Something live at the left, under a key of its own, and an entry of the document at the right. */
export function pairRow(key: string, label: string, says: Term, entry: Entry, answers: Answers): Row {
  const left = factRow(label, () => says, { across: 3 });
  return {
    ...left,
    keys: { words: key, price: entry.key },
    cells: (row, at) => [
      ...left.cells(row, at),
      { row, column: columns.unit, says: { kind: "constant", value: entry.label.en }, style: "letterLabel" },
      { ...entryCell(row, columns.price, entry, answers[entry.key] ?? null), across: 2 },
    ],
  };
}
