import fc from "fast-check";
import { calls } from "../../functions/calls";
import { tableCalls } from "../../functions/layout-calls";
import { messages } from "../../functions/messages";
import { isError, type Value } from "../../src/units/cell";

describe("Any input whatever", () => {
  const cell = fc.oneof(
    fc.double({ min: 0, max: 120, noNaN: true }),
    fc.integer({ min: -5, max: 200 }),
    fc.double(),
    fc.constantFrom(null, undefined, "", 0, true, false, "nearest", "at least", "at most", NaN, Infinity, 5e-324, 1e308),
    fc.constantFrom("60'", `10' 6 1/2"`, "18 m", "450 mm", "1,500", "12,5", "#REF!", "abc", "5000 ft"),
    fc.constantFrom({ error: "#N/A" }, { code: "#DIV/0!" }, { code: 7 }, {}, new Date(0), () => 1, Symbol("x"), 10n, [[1]]),
    fc.string({ maxLength: 8 }),
  ); // prettier-ignore
  const range = fc
    .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 3 }))
    .chain(([rows, columns]) =>
      fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), {
        minLength: rows,
        maxLength: rows,
      }),
    );
  const term = fc.oneof(
    { weight: 3, arbitrary: cell },
    { weight: 2, arbitrary: range },
    fc.constantFrom([], [[]], [3]),
  );
  const fine = (value: unknown) =>
    isError(value)
      ? value.message !== messages.unexpected
      : typeof value === "string" || Number.isFinite(value);
  const shapedIds = [
    "CIRCUMFERENCE",
    "AREA",
    "PANELS",
    "POSTS",
    "BAY",
    "FOOTING",
    "FILL",
    "TONS",
    "TRUCK_YARDS",
    "FEET",
    "FEET_INCHES",
  ];

  const alignedIds = ["LOADS", "PANEL_MIX"];
  const isProper = (id: string, terms: unknown[]): boolean => {
    const result = calls[id](...(terms as Value[]));
    if (!(Array.isArray(result) ? result.flat() : [result]).every(fine)) return false;
    if (isError(result)) return true;
    if (id in tableCalls) return Array.isArray(result) && result.every((row) => row.length === 8);
    const followed = shapedIds.includes(id) ? terms[0] : alignedIds.includes(id) ? terms[1] : null;
    if (!Array.isArray(followed)) return !Array.isArray(result);
    const widths = followed.map((row) => (Array.isArray(row) ? row.length : 1));
    return Array.isArray(result) && result.map((row) => row.length).join() === widths.join();
  };

  test.each(Object.keys(calls))("gives %s a finite number, a text or an error in the right shape", (id) => {
    fc.assert(
      fc.property(fc.array(term, { maxLength: 6 }), (terms) => isProper(id, terms)),
      { numRuns: 10_000 },
    );
  });
});
