/** A lattice is all whole combinations of a few vectors that do not depend on one another. */
export type Vector = readonly number[];

/** Other vectors of the same lattice, and how often each takes every one that was given. */
interface Reduced {
  vectors: number[][];
  made: number[][];
}

/** How nearly upright two neighbors must be, in (1/4, 1), and a stop that only noise of the arithmetic could reach. */
const UPRIGHT = 0.99;
const MOST_STEPS = 5000;

/** Where points are wanted: no farther from the center than `distance`, and in every place from `least` to `most`. */
export interface Region {
  center: Vector;
  distance: number;
  least: Vector;
  most: Vector;
}

/**
 * Calls with every whole combination of the vectors that lies in the region, as how often it takes each vector; what lies
 * on the rim may be left out. False where a call gives false, and where more than `room` places would have to be
 * looked at; calls may then have been made.
 *
 * The vectors are first made short and nearly upright (A. K. Lenstra, H. W. Lenstra, L. Lovász, "Factoring polynomials
 * with rational coefficients", 1982). Then the last coefficient can take few values, the one before it few for each of
 * these, and so on (U. Fincke, M. Pohst, 1985).
 */
export function pointsWithin(
  basis: readonly Vector[],
  { center, distance, least, most }: Region,
  room: number,
  call: (counts: readonly number[]) => boolean,
): boolean {
  const { vectors, made } = reduced(basis);
  const { parts, uprights, squares } = upright(vectors);
  const aims = uprights.map((star, k) => dot(center, star) / squares[k]);
  // How far the coefficients before the kth can still move each place, as a part of the distance that is left to them.
  const movable = uprights.map((_, k) =>
    least.map((_, i) =>
      Math.sqrt(uprights.slice(0, k).reduce((sum, star, j) => sum + star[i] ** 2 / squares[j], 0)),
    ),
  );
  const taken = made.map(() => 0);
  const counts = [...made, null].map(() => made.map(() => 0));
  const places = [...made, null].map(() => least.map(() => 0));
  uprights.forEach((star, k) => subtract(places[made.length], star, -aims[k]));
  let left = room;
  const walk = (k: number, rest: number): boolean => {
    let aim = aims[k];
    for (let j = k + 1; j < taken.length; j++) aim -= taken[j] * parts[j][k];
    const [from, to] = steps(k, Math.sqrt(rest));
    for (let times = Math.ceil(aim + from); times <= aim + to; times++) {
      if (left-- === 0) return false;
      taken[k] = times;
      for (let i = 0; i < made.length; i++) counts[k][i] = counts[k + 1][i] + times * made[k][i];
      for (let i = 0; i < least.length; i++) places[k][i] = places[k + 1][i] + (times - aim) * uprights[k][i];
      if (k === 0) {
        if (!call(counts[0])) return false;
      } else if (!walk(k - 1, Math.max(0, rest - (times - aim) ** 2 * squares[k]))) return false;
    }
    return true;
  };
  /** Between which steps from its aim a coefficient keeps near enough, with every place where those before it can still mend it. */
  const steps = (k: number, reach: number): [from: number, to: number] => {
    let to = reach / Math.sqrt(squares[k]);
    let from = -to;
    for (let i = 0; i < least.length; i++) {
      const step = uprights[k][i];
      if (step === 0) continue;
      const low = (least[i] - places[k + 1][i] - reach * movable[k][i]) / step;
      const high = (most[i] - places[k + 1][i] + reach * movable[k][i]) / step;
      from = Math.max(from, Math.min(low, high));
      to = Math.min(to, Math.max(low, high));
    }
    return [from, to];
  };
  return walk(made.length - 1, distance ** 2);
}

/** Short and nearly upright vectors of the same lattice. */
function reduced(basis: readonly Vector[]): Reduced {
  const vectors = basis.map((vector) => [...vector]);
  const made = basis.map((_, k) => basis.map((_, i) => (i === k ? 1 : 0)));
  for (let k = 1, step = 0; k < vectors.length && step < MOST_STEPS; step++) {
    const { parts, squares } = upright(vectors.slice(0, k + 1));
    const own = parts[k];
    for (let j = k - 1; j >= 0; j--) {
      const times = Math.round(own[j]);
      if (times === 0) continue;
      subtract(vectors[k], vectors[j], times);
      subtract(made[k], made[j], times);
      subtract(own, parts[j], times);
    }
    if (squares[k] >= (UPRIGHT - own[k - 1] ** 2) * squares[k - 1]) k++;
    else {
      for (const list of [vectors, made]) [list[k - 1], list[k]] = [list[k], list[k - 1]];
      k = Math.max(1, k - 1);
    }
  }
  return { vectors, made };
}

/** What of each vector stands upright on those before it, the square of its length, and how much of each of those is in it (1 of itself). */
function upright(vectors: readonly Vector[]) {
  const uprights: number[][] = [];
  const squares: number[] = [];
  const parts = vectors.map((vector, k) => {
    const star = [...vector];
    const own = vectors.map((_, j) => Number(j === k));
    for (let j = 0; j < k; j++) {
      own[j] = dot(vector, uprights[j]) / squares[j];
      subtract(star, uprights[j], own[j]);
    }
    uprights.push(star);
    squares.push(dot(star, star));
    return own;
  });
  return { parts, uprights, squares };
}

function subtract(from: number[], vector: Vector, times: number): void {
  for (let i = 0; i < from.length; i++) from[i] -= times * vector[i];
}

function dot(a: Vector, b: Vector): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}
