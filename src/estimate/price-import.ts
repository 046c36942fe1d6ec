import { type Cell } from "../units/cell";
import { readDay } from "../units/day";
import { messages } from "./messages";
import { itemName } from "./missing-prices";
import { readAmount, readSize, readYesOrNo } from "./price-cells";
import { columnNamed, kindNamed, plainWords, type TableColumn } from "./price-words";
import { priceKinds, unpricedRow, type PriceRow } from "./prices";

/** A row of the prices with its place on their sheet. */
export type StandingPrice = PriceRow & { at: number };

/** What became of one line of a table. Lines count from 1, as the table shows them. */
export type ImportedLine = { line: number; text: string } & (
  | { kind: "not understood"; why: string }
  | { kind: "new"; row: PriceRow }
  | { kind: "changed" | "unchanged"; row: PriceRow; before: StandingPrice; also: AlsoSaid }
);

/** What else than a price a line says of a row that stands; what it leaves blank stays as it is. */
export type AlsoSaid = Partial<Pick<PriceRow, "waste" | "taxed">>;

/** A table as prices: its lines, and the headers that name no column of prices. */
export interface PriceTable {
  lines: ImportedLine[];
  passedOver: string[];
}

/** A text of a cell longer than this is not taken. */
const longest = 200;
/** The header is looked for in so many lines. */
const headerWithin = 20;

const textOf = (cell: Cell): string =>
  typeof cell === "string"
    ? cell.replace(/[\p{Cc}\p{Cf}]+/gu, " ").trim()
    : typeof cell === "number"
      ? String(cell)
      : "";

/**
 * Reads a table as prices beside those that stand. A line belongs to a row of the same item, size and supplier, or else
 * to an example row of that item and size. A price that comes without a date gets `today`. Nothing that is not understood is
 * guessed: its line says why.
 */
export function readPriceTable(
  table: Cell[][],
  standing: readonly StandingPrice[],
  today: number,
): PriceTable {
  const head = table
    .slice(0, headerWithin)
    .findIndex((row) =>
      ["item", "price"].every((name) => row.some((one) => columnNamed(textOf(one)) === name)),
    );
  if (head < 0)
    return { lines: [{ line: 1, text: "", kind: "not understood", why: messages.noHeader }], passedOver: [] };
  const columns = new Map<TableColumn, number>();
  const passedOver: string[] = [];
  table[head].forEach((cell, at) => {
    const name = columnNamed(textOf(cell));
    if (name && !columns.has(name)) columns.set(name, at);
    else if (textOf(cell)) passedOver.push(textOf(cell).slice(0, longest));
  });
  const seen = new Map<string, number>();
  let free = standing;
  const lines = table.slice(head + 1).flatMap((cells, k): ImportedLine[] => {
    if (cells.every((cell) => textOf(cell) === "")) return [];
    const line = head + 2 + k;
    const of = (name: TableColumn): Cell => cells[columns.get(name) ?? -1] ?? null;
    const text = textOf(of("item")).slice(0, longest);
    const row = priceOf(of, today);
    if (typeof row === "string") return [{ line, text, kind: "not understood", why: row }];
    const key = keyOf(row);
    const earlier = seen.get(key);
    if (earlier !== undefined) return [{ line, text, kind: "not understood", why: messages.twice(earlier) }];
    seen.set(key, line);
    const says = (name: TableColumn) => textOf(of(name)) !== "";
    const also = { ...(says("waste") && { waste: row.waste }), ...(says("taxed") && { taxed: row.taxed }) };
    const became = beside(row, free, says("date"), also);
    if (became.before) free = free.filter((one) => one !== became.before);
    return [{ line, text, ...became }];
  });
  return { lines, passedOver };
}

const keyOf = ({ item, size, supplier }: PriceRow) => JSON.stringify([item, size, plainWords(supplier)]);

/** What a price does to the rows that no earlier line belongs to. */
function beside(row: PriceRow, free: readonly StandingPrice[], isDated: boolean, also: AlsoSaid) {
  const before =
    free.find((one) => keyOf(one) === keyOf(row)) ??
    free.find((one) => one.example && one.item === row.item && one.size === row.size);
  if (!before) return { kind: "new", row } as const;
  const { waste = before.waste, taxed = before.taxed } = also;
  const alike = before.price === row.price && before.waste === waste && before.taxed === taxed;
  const same = alike && !before.example && (!isDated || before.date === row.date);
  return { kind: same ? "unchanged" : "changed", row, before, also } as const;
}

/** The price that a line says, or why it says none. */
function priceOf(of: (name: TableColumn) => Cell, today: number): PriceRow | string {
  const name = textOf(of("item"));
  const supplier = textOf(of("supplier"));
  if (Math.max(name.length, supplier.length) > longest) return messages.tooLong(longest);
  const named = kindNamed(name);
  if (!named) return name === "" ? messages.noItem : messages.unknownItem;
  const { sized } = priceKinds[named.kind];
  const size = sized ? readSize(textOf(of("size")) === "" ? named.rest : of("size"), sized) : null;
  if (size === undefined) return messages.noSize(sized!);
  const price = readAmount(typeof of("price") === "number" ? of("price") : textOf(of("price")));
  if (price === undefined) return messages.noAmount;
  const row = unpricedRow({ item: named.kind, size });
  const unit = textOf(of("unit"));
  if (unit !== "" && !sameUnit(unit, row.unit)) return messages.otherUnit(row.unit, itemName(row));
  const waste = textOf(of("waste")) === "" ? 0 : readAmount(textOf(of("waste")).replace(/\s*%$/, ""));
  if (waste === undefined || waste > 100) return messages.noWaste;
  const taxed = textOf(of("taxed")) === "" ? row.taxed : readYesOrNo(of("taxed"));
  if (taxed === undefined) return messages.noYesOrNo;
  const date =
    textOf(of("date")) === ""
      ? today
      : readDay(typeof of("date") === "number" ? of("date") : textOf(of("date")));
  if (date === undefined) return messages.noDate;
  return { ...row, name, price, waste, taxed, supplier, date };
}

/** The words for the units of items, in English and Spanish. */
const unitWords: Record<string, string> = {
  each: "each|ea|ea.|pc|pcs|piece|unit|pieza|pza|c/u|cada uno",
  bag: "bag|bags|bolsa|saco",
  "cu yd": "cu yd|cubic yard|cubic yards|cy|yd|yard|yd3|yarda|yarda cubica",
  ton: "ton|tons|tn|tonelada",
  load: "load|loads|trip|viaje|carga",
  roll: "roll|rolls|rollo",
  can: "can|cans|lata",
};

const sameUnit = (written: string, unit: string) =>
  unitWords[unit].split("|").includes(plainWords(written)) || plainWords(written) === unit;
