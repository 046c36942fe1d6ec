import { type FieldValue } from "../../estimate/fields";
import { put } from "../estimate-cells";
import { operate, when, type Expression } from "../expression";
import { businessEntries } from "./bid-entries";
import { answered, type Entry } from "./entries";
import { columns, entryCell, entryRow, factRow, headingRow, paragraphRow, type Look, type Row } from "./rows";
import { cellOf, type EstimateSource } from "./source";

type Answers = Readonly<Record<string, FieldValue>>;

/** A text of the estimate, blank where it is blank there. */
export const textIn = (source: EstimateSource, key: string): Expression => textOf(cellOf(source, key));

/** A cell's text, blank where it is blank. */
export const textOf = (cell: Expression): Expression => when(operate(cell, "=", ""), "", cell);

/** A label that stands only where the cell that it is for says something. */
const labelOf = (label: string, cell: Expression): Expression => when(operate(cell, "=", ""), "", label);

/** A label and a text of the estimate; neither stands where that is blank there. */
export function sourceRow(
  key: string,
  label: string,
  source: EstimateSource,
  inEstimate: string,
  look: Look = {},
): Row {
  const fact = factRow(labelOf(label, cellOf(source, inEstimate)), () => textIn(source, inEstimate), look);
  return { ...fact, keys: { words: key } };
}

/** Who writes the letter: the business, below it what was said of it, and license and insurance under their names. */
export function businessRows(answers: Answers): Row[] {
  const [business, lines, ...named] = businessEntries;
  const says = ({ key }: Entry) => answers[key] ?? null;
  return [
    ...answered([business], answers).map((entry) =>
      paragraphRow(entry, says(entry), { across: 3, style: "letterBusiness", height: 18 })),
    ...answered([lines], answers).map((entry) => paragraphRow(entry, says(entry), { style: "letterSmall" })),
    ...answered(named, answers).map((entry) => entryRow(entry, says(entry))),
  ];
} // prettier-ignore

/** An entry that is a paragraph under a heading of its own. */
export const headedRows = (entry: Entry, answers: Answers): Row[] => [
  headingRow(entry.label.en),
  paragraphRow(entry, answers[entry.key]),
];

/** A row with an entry of the document at its right; its label stands only where that is filled. */
export function pairRow(left: Row, entry: Entry, answers: Answers): Row {
  return {
    ...left,
    keys: { ...left.keys, price: entry.key },
    cells: (row, at) => [
      ...left.cells(row, at),
      put(row, columns.unit, labelOf(entry.label.en, at(entry.key)), "letterLabel"),
      { ...entryCell(row, columns.price, entry, answers[entry.key] ?? null), across: 2 },
    ],
  };
}
