/** The time of one call in nanoseconds: the best of several rounds, each long enough for the clock. */
export function nanoseconds(work: () => unknown, leastMilliseconds = 40): number {
  let calls = 1;
  let best = Infinity;
  for (let round = 0; round < 9;) {
    const start = performance.now();
    for (let k = 0; k < calls; k++) sink = work();
    const took = performance.now() - start;
    if (took < leastMilliseconds) {
      calls = Math.ceil(calls * Math.max(2, (1.2 * leastMilliseconds) / Math.max(took, 0.01)));
      if (took * 4 < leastMilliseconds) continue;
    }
    best = Math.min(best, (took * 1e6) / calls);
    round++;
  }
  return best;
}

/** Keeps the engine from dropping work whose result nobody reads. */
export let sink: unknown;

/** One line of the report. A bar is the most that the figure may be. */
export interface Row {
  what: string;
  figure: number;
  unit: string;
  peer?: string;
  peerFigure?: number;
  bar?: number;
  /** What the bar is held against: the figure itself, how many times the peer takes, or how many times it takes the peer. */
  against?: "figure" | "slower" | "faster";
}

const shown = (x: number) => (x >= 100 ? Math.round(x).toLocaleString("en-US") : x.toPrecision(3));

/** Prints the rows as a table with ratios, then a line for every bar that is missed. */
export function report(rows: Row[]): void {
  console.log(["what", "figure", "peer", "ratio", "bar"].join(" | "));
  console.log("--- | --- | --- | --- | ---");
  const missed: string[] = [];
  for (const { what, figure, unit, peer, peerFigure, bar, against = "figure" } of rows) {
    const slower = peerFigure === undefined ? NaN : figure / peerFigure;
    const held = { figure, slower, faster: 1 / slower }[against];
    const met = bar === undefined || (against === "faster" ? held >= bar : held <= bar);
    const ratio = Number.isNaN(slower)
      ? ""
      : slower >= 1
        ? `${shown(slower)} times its time`
        : `${shown(1 / slower)} times faster`;
    const limit = {
      figure: `at most ${bar} ${unit}`,
      slower: `at most ${bar} times`,
      faster: `at least ${bar} times faster`,
    }[against];
    console.log(
      [
        what,
        `${shown(figure)} ${unit}`,
        peer ? `${peer}: ${shown(peerFigure!)} ${unit}` : "",
        ratio,
        bar === undefined ? "" : limit,
      ].join(" | "),
    );
    if (!met) missed.push(`MISSED: ${what} is ${shown(held)}, the bar is ${limit}.`);
  }
  console.log(missed.length ? `\n${missed.join("\n")}` : "\nEvery bar is met.");
}
