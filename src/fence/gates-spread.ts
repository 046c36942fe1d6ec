/**
 * The pieces of a fence in the order they stand, clockwise from the first gate: gates and other pieces keep their own
 * order, and after gate i of k come floor(iN/k) - floor((i - 1)N/k) of the N others.
 */
export function withGatesSpread<Piece>(gates: readonly Piece[], others: readonly Piece[]): Piece[] {
  if (gates.length === 0) return [...others];
  const upTo = (i: number) => Math.floor((i * others.length) / gates.length);
  return gates.flatMap((gate, i) => [gate, ...others.slice(upTo(i), upTo(i + 1))]);
}
