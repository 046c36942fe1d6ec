import { areasIn } from "../../../src/hosts/excel/content-cells";
import fc from "fast-check";
import {
  areaAddress,
  joinAddresses,
  rectangles,
  rowLines,
  rowRuns,
  singles,
  type Spot,
} from "../../../src/hosts/excel/areas";
import { areasOf, keysOf } from "./memory";

const spots = fc.uniqueArray(fc.record({ row: fc.nat(9), column: fc.nat(9) }), {
  selector: ({ row, column }) => `${row} ${column}`,
  maxLength: 60,
});
const keys = (found: Spot[]) => found.map(({ row, column }) => `${row} ${column}`).sort();

describe("areas of cells", () => {
  it.each([
    ["rectangles", rectangles],
    ["runs along the rows", rowRuns],
    ["single cells", singles],
  ])("as %s cover every cell once and no other, through their addresses", (_, areasFrom) => {
    fc.assert(
      fc.property(spots, (found) => {
        const addresses = joinAddresses(areasFrom(found).map(areaAddress));
        const covered = addresses.flatMap(areasOf).flatMap((area) => keysOf(area).flat());
        expect(covered.sort()).toEqual(keys(found));
      }),
    );
  });

  it("join equal runs on rows that follow each other", () => {
    const block = [2, 3, 4].flatMap((row) => [1, 2].map((column) => ({ row, column })));
    expect(rectangles([...block, { row: 6, column: 1 }]).map(areaAddress)).toEqual(["B3:C5", "B7"]);
  });

  it("name whole rows in runs", () => {
    expect(rowLines([7, 5, 6, 0])).toEqual(["1:1", "6:8"]);
    expect(rowLines([])).toEqual([]);
  });

  it("never make an address of over 255 characters", () => {
    const many = Array.from({ length: 500 }, (_, k) => `B${2 * k + 1}`);
    const joined = joinAddresses(many);
    expect(joined.join(",").split(",")).toEqual(many);
    expect(Math.max(...joined.map((one) => one.length))).toBeLessThanOrEqual(255);
  });
});

describe("the areas in an address that Excel tells", () => {
  it("are told from the names of sheets before them, and reach the sheet's end where whole rows or columns are named", () => {
    const end = { bottom: 1_048_575, right: 16_383 };
    expect(areasIn("'A1, it''s B2'!$B$2:$C$4, Sheet1!D7,Sheet1!K:L,'A1, it''s B2'!3:5")).toEqual([
      { top: 1, left: 1, bottom: 3, right: 2 },
      { top: 6, left: 3, bottom: 6, right: 3 },
      { ...end, top: 0, left: 10, right: 11 },
      { ...end, top: 2, left: 0, bottom: 4 },
    ]);
  });
});
