import fc from "fast-check";
import { calls } from "../../functions/calls";
import { readPriceTable } from "../../src/estimate/price-import";
import { examplePrices } from "../../src/estimate/prices";
import { contentOfPlans } from "../../src/sheets/calculate";
import { priceChanges } from "../../src/sheets/price-changes";
import { readPrices } from "../../src/sheets/price-rows";
import { pricesPlan } from "../../src/sheets/prices";
import { pricesLayoutOf } from "../../src/sheets/prices-layout";
import { type Cell } from "../../src/units/cell";
import { shownBy } from "./shown";

const fresh = shownBy(contentOfPlans([pricesPlan(examplePrices)], (name) => calls[name]).sheets[0]).values;
const width = Math.max(...fresh.map((row) => row.length));

/** A sheet of prices as a user leaves it: rows put in, a column put in, rows in another order, notes beside and below. */
const usersSheet = fc
  .record({
    order: fc.shuffledSubarray(fresh.slice(3), { minLength: fresh.length - 3 }),
    above: fc.integer({ min: 0, max: 2 }),
    between: fc.array(fc.nat(fresh.length), { maxLength: 5 }),
    column: fc.option(fc.integer({ min: 1, max: width })),
    notes: fc.array(fc.string(), { minLength: 1, maxLength: 4 }),
  })
  .map(({ order, above, between, column, notes }) => {
    const rows = order.map((row) => [...row]);
    for (const at of between) rows.splice(at, 0, [null, "a row of the user's own", 3, "each", 1]);
    const head = [
      ...fresh.slice(0, 1),
      ...Array.from({ length: above }, (): Cell[] => [null, "note"]),
      ...fresh.slice(1, 3),
    ];
    const all = [...head, ...rows, ...notes.map((note): Cell[] => [null, note])];
    return all.map((row) => {
      const full: Cell[] = Array.from({ length: width }, (_, k) => row[k] ?? null);
      return column === null ? full : [...full.slice(0, column), "own", ...full.slice(column)];
    });
  });

const tables = fc.array(
  fc.tuple(
    fc.constantFrom("Panel", "Gate leaf", "Paint"),
    fc.constantFrom("", "10 ft", "12 ft", "14 ft"),
    fc.constantFrom("95", "$1,100.50", "call", "=1+1"),
    fc.constantFrom("", "Supplier A (example)", "=Supplier B"),
  ),
  { maxLength: 8 },
);

describe("prices brought in from a table", () => {
  it("take waste and tax of a row that stands where the table says them, and leave both where it is silent", () => {
    const layout = pricesLayoutOf("Prices", fresh);
    const own = fresh.map((row) => row.map((cell) => (cell === "example" ? null : cell)));
    const standing = readPrices(own);
    const panel = standing.find(({ item, size }) => item === "panel" && size === 12)!;
    const changesOf = (...cells: Cell[]) =>
      priceChanges(readPriceTable([["item", "size", "price", "waste", "taxed"], ["Panel", "12 ft", panel.price, ...cells]], standing, 46000).lines, layout, own.length)
        .filter(({ column }) => column === layout.columns.waste || column === layout.columns.taxed)
        .map(({ row, value }) => [row, value]);
    expect(changesOf(12.5, "no")).toEqual([[panel.at, 12.5], [panel.at, "no"]]);
    expect(changesOf("", panel.taxed ? "no" : "yes")).toEqual([[panel.at, panel.taxed ? "no" : "yes"]]);
    expect(changesOf("", "")).toEqual([]);
  }); // prettier-ignore

  it("change the prices of rows that stand, add rows below, and lose or touch nothing else", () => {
    fc.assert(
      fc.property(usersSheet, tables, (values, lines) => {
        const layout = pricesLayoutOf("Prices", values);
        const standing = readPrices(values);
        const table = readPriceTable([["item", "size", "price", "supplier"], ...lines], standing, 46000);
        const changes = priceChanges(table.lines, layout, values.length);
        const after = values.map((row) => [...row]);
        for (const { row, column, value } of changes) (after[row] ??= [])[column] = value;

        const { price, date, example, supplier } = layout.columns;
        const may = new Set([price, date, example, supplier]);
        values.forEach((row, at) => {
          const isPrice = standing.some((one) => one.at === at);
          row.forEach((value, column) => {
            if (!isPrice || !may.has(column)) expect(after[at][column]).toBe(value);
          });
        });
        const taken = table.lines.filter(({ kind }) => kind === "new" || kind === "changed");
        const rows = readPrices(Array.from(after, (row) => Array.from(row, (value) => value ?? null)));
        expect(rows).toHaveLength(standing.length + taken.filter(({ kind }) => kind === "new").length);
        for (const line of taken)
          if (line.kind !== "not understood") {
            const { item, size, price, supplier, date } = line.row;
            expect(rows).toContainEqual(expect.objectContaining({ item, size, price, date }));
            if (line.kind === "new")
              expect(rows).toContainEqual(expect.objectContaining({ item, size, supplier }));
          }
        expect(changes.every(({ value }) => value === null || typeof value !== "object")).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it("give every date its format, and no other cell one", () => {
    const standing = readPrices(fresh);
    const table = readPriceTable(
      [
        ["item", "price"],
        ["12 ft panel", 5],
        ["13 ft panel", 6],
      ],
      standing,
      46000,
    );
    const changes = priceChanges(table.lines, pricesLayoutOf("Prices", fresh), fresh.length);
    const formatted = changes.filter(({ format }) => format !== undefined);
    expect(formatted.map(({ column, value, format }) => [column, value, format])).toEqual([
      [9, 46000, "yyyy-mm-dd"],
      [9, 46000, "yyyy-mm-dd"],
    ]);
  });
});
