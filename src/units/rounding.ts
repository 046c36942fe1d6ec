/** Numbers that differ by no more than this count as equal, relative above 1. */
export const EPSILON = 1e-9;

/** True when two numbers differ by no more than 1e-9, relative above 1. */
export function equal(a: number, b: number): boolean {
  return Math.abs(a - b) <= EPSILON * Math.max(1, Math.abs(a), Math.abs(b));
}

/**
 * The least whole number not under x, where a part under 1e-9 (relative above 1) is noise of the arithmetic and
 * not another piece: 3.0000000001 is 3 and 3.001 is 4.
 */
export function roundUp(x: number): number {
  return Math.ceil(x - EPSILON * Math.max(1, x)) + 0;
}

/** The greatest whole number not over x, with the same allowance: 2.9999999999 is 3. */
export function roundDown(x: number): number {
  return Math.floor(x + EPSILON * Math.max(1, x)) + 0;
}
