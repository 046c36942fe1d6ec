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
