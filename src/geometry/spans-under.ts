/** From one place on a closed line to another, the end over the beginning: past the line's own end it goes on. */
export type Span = readonly [from: number, to: number];

/** Places looked at between two whole numbers; between two of them a function has at most one dip. */
const STEPS = 24;
const HALVINGS = 60;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** The spans of a line that closes after `length` on which a function is under 0, in order; the whole line is one span. */
export function spansUnder(of: (at: number) => number, length: number): Span[] {
  const places = placesOn(of, length);
  const start = places.findIndex(({ value }) => value >= 0);
  if (start < 0) return [[0, length]];
  const round = [...places.slice(start), ...places.slice(0, start).map(later(length)), later(length)(places[start])];
  const spans: [number, number][] = [];
  round.slice(1).forEach((here, k) => {
    const before = round[k];
    if (before.value >= 0 && here.value < 0) spans.push([crossing(of, before.at, here.at), here.at]);
    else if (before.value < 0 && here.value >= 0) spans.at(-1)![1] = crossing(of, here.at, before.at);
  });
  return spans;
} // prettier-ignore

/** The least value of a function on such a line. */
export const leastOf = (of: (at: number) => number, length: number): number =>
  Math.min(...placesOn(of, length).map(({ value }) => value));

interface Valued {
  at: number;
  value: number;
}

const later =
  (by: number) =>
  ({ at, value }: Valued): Valued => ({ at: at + by, value });

/** Even places along the line, and where the function dips lowest between them. */
function placesOn(of: (at: number) => number, length: number): Valued[] {
  const valued = (at: number): Valued => ({ at, value: of(at) });
  const even = Array.from({ length: length * STEPS }, (_, k) => valued(k / STEPS));
  return even
    .flatMap((here, k) => {
      const [before, after] = [even.at(k - 1)!, even[(k + 1) % even.length]];
      const dips = here.value < before.value && here.value <= after.value;
      return dips ? [here, valued(lowest(of, here.at - 1 / STEPS, here.at + 1 / STEPS))] : [here];
    })
    .sort((a, b) => a.at - b.at);
}

/** Where a function with one dip between two places is lowest. */
function lowest(of: (at: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let k = 0; k < HALVINGS; k++) {
    const part = GOLDEN * (high - low);
    if (of(high - part) < of(low + part)) high = low + part;
    else low = high - part;
  }
  return (low + high) / 2;
}

/** Where a function that is 0 or over at one place and under 0 at another changes between them. */
function crossing(of: (at: number) => number, over: number, under: number): number {
  let [a, b] = [over, under];
  for (let k = 0; k < HALVINGS; k++) {
    const middle = (a + b) / 2;
    if (of(middle) >= 0) a = middle;
    else b = middle;
  }
  return b;
}
