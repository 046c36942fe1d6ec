import fc from "fast-check";
import { sentBlocks } from "../../../src/hosts/excel/sent-blocks";

const spots = fc.uniqueArray(
  fc.record({ row: fc.integer({ min: 0, max: 300 }), column: fc.integer({ min: 0, max: 20 }) }),
  { maxLength: 40, selector: ({ row, column }) => `${row} ${column}` },
);
const isIn = (
  { top, left, bottom, right }: { top: number; left: number; bottom: number; right: number },
  { row, column }: { row: number; column: number },
) => row >= top && row <= bottom && column >= left && column <= right;

describe("the blocks that cells are sent in", () => {
  it("hold each cell in one block alone, and no block reaches into another", () => {
    fc.assert(
      fc.property(spots, (cells) => {
        const blocks = sentBlocks(cells, 5);
        expect(blocks.flatMap((block) => block.cells)).toHaveLength(cells.length);
        for (const cell of cells)
          expect(blocks.filter(({ area }) => isIn(area, cell)).map((block) => block.cells)).toEqual([
            expect.arrayContaining([cell]),
          ]);
      }),
    );
  });

  it("leave out what is blank between cells far apart, and stay one where that is little", () => {
    const far = [0, 1, 200].map((row) => ({ row, column: 3 }));
    expect(sentBlocks(far, 5).map(({ area }) => area)).toEqual([
      { top: 0, left: 3, bottom: 1, right: 3 },
      { top: 200, left: 3, bottom: 200, right: 3 },
    ]);
    expect(sentBlocks(far.slice(0, 2).concat({ row: 20, column: 3 }), 5)).toHaveLength(1);
    expect(sentBlocks([], 5)).toEqual([]);
  });
});
