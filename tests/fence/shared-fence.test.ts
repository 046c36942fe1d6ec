import fc from "fast-check";
import { piecesByOther, stakesByOther, type SharedPiece } from "../../src/fence/shared-fence";

/** A fence of so many pieces whose gates are the pieces named, each with its number; those in `theirs` are by other. */
const fence = (pieces: number, gates: Record<number, number> = {}, theirs: number[] = []): SharedPiece[] =>
  Array.from({ length: pieces }, (_, k) => ({ gate: gates[k + 1], byOther: theirs.includes(gates[k + 1]) }));
const named = (marks: boolean[]) => marks.flatMap((mark, k) => (mark ? [k + 1] : []));

describe("fence by other", () => {
  it("is every piece from one stake clockwise to the other, with the stakes at both ends", () => {
    const pieces = piecesByOther(fence(12, { 1: 1 }), [{ from: 3, to: 7 }]);
    expect(named(pieces)).toEqual([3, 4, 5, 6]);
    expect(named(stakesByOther(pieces))).toEqual([3, 4, 5, 6, 7]);
  });

  it("goes on past the last stake to the first, and past stake 1 where no gate of the fence's own is there", () => {
    expect(named(piecesByOther(fence(12, { 1: 1 }), [{ from: 11, to: 1 }]))).toEqual([11, 12]);
    expect(named(piecesByOther(fence(12), [{ from: 11, to: 3 }]))).toEqual([1, 2, 11, 12]);
    expect(named(piecesByOther(fence(12, { 1: 1 }, [1]), [{ from: 11, to: 3 }]))).toEqual([1, 2, 11, 12]);
  });

  it("is a gate by other, with its two stakes, wherever it stands, in a run or by itself", () => {
    const pieces = piecesByOther(fence(12, { 1: 1, 7: 2 }, [2]), []);
    expect([named(pieces), named(stakesByOther(pieces))]).toEqual([[7], [7, 8]]);
    const both = piecesByOther(fence(12, { 1: 1, 7: 2 }, [2]), [{ from: 6, to: 8 }, { from: 8, to: 10 }]);
    expect([named(both), named(stakesByOther(both))]).toEqual([[6, 7, 8, 9], [6, 7, 8, 9, 10]]);
  });

  it("is refused with a sentence where a stake is not there, is its own end, a gate is passed, or runs overlap", () => {
    const of = (...stakes: number[]) => () =>
      piecesByOther(fence(12, { 1: 1, 7: 2 }), stakes.flatMap((from, k) => (k % 2 ? [] : [{ from, to: stakes[k + 1] }])));
    expect(of(3, 13)).toThrow("fence by other: there is no stake 13, the fence has stakes 1 to 12");
    expect(of(4, 4)).toThrow("fence by other: a run goes from one stake clockwise to another, not from 4 to 4");
    expect(of(3, 9)).toThrow("fence by other: the run from stake 3 to stake 9 passes gate 2, which is yours: end the run at its posts, or name the gate among those by other");
    expect(of(11, 2)).toThrow(/passes gate 1/);
    expect(of(2, 5, 4, 6)).toThrow("fence by other: two runs hold the fence that begins at stake 4: name it once");
  });

  it("never takes a piece of the own gates, holds a stake at every end of what it takes, and counts what the runs are long", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 60 }), fc.nat(59), fc.nat(59), fc.nat(59), (count, gate, a, b) => {
        const [from, to, at] = [(a % count) + 1, (b % count) + 1, (gate % count) + 1];
        const pieces = fence(count, { [at]: 1 });
        const length = (to - from + count) % count;
        const passes = (at - from + count) % count < length;
        if (from === to || passes) {
          expect(() => piecesByOther(pieces, [{ from, to }])).toThrow(/^fence by other: /);
          return;
        }
        const found = piecesByOther(pieces, [{ from, to }]);
        const stakes = stakesByOther(found);
        expect(found[at - 1]).toBe(false);
        expect([named(found).length, named(stakes).length]).toEqual([length, length + 1]);
        expect([stakes[from - 1], stakes[to - 1]]).toEqual([true, true]);
      }),
    );
  });
}); // prettier-ignore
