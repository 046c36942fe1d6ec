/**
 * The x for which rows times x is the right-hand side, by elimination with the largest pivot first. The matrix is
 * square; where it is singular, the result holds what is no finite number.
 */
export function solve(rows: readonly (readonly number[])[], right: readonly number[]): number[] {
  const work = rows.map((row, i) => [...row, right[i]]);
  const size = work.length;
  for (let k = 0; k < size; k++) {
    let pivot = k;
    for (let i = k + 1; i < size; i++) if (Math.abs(work[i][k]) > Math.abs(work[pivot][k])) pivot = i;
    [work[k], work[pivot]] = [work[pivot], work[k]];
    for (let i = k + 1; i < size; i++) {
      const factor = work[i][k] / work[k][k];
      for (let j = k; j <= size; j++) work[i][j] -= factor * work[k][j];
    }
  }
  const x = Array<number>(size).fill(0);
  for (let k = size - 1; k >= 0; k--) {
    const known = work[k].slice(k + 1, size).reduce((sum, value, j) => sum + value * x[k + 1 + j], 0);
    x[k] = (work[k][size] - known) / work[k][k];
  }
  return x;
}
