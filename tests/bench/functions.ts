import highsLoader from "highs";
import { all, create } from "mathjs";
import { calls } from "../../functions/calls";
import { newJob } from "../../src/estimate/job";
import { panelMixes } from "../../src/estimate/panel-mixes";
import { examplePrices } from "../../src/estimate/prices";
import { circumcircle, type Chord } from "../../src/geometry/cyclic-polygon";
import { panelMix } from "../../src/fence/panel-mix";
import { loads } from "../../src/ground/hauling";
import { nanoseconds, type Row } from "./measure";

const math = create(all, {});
const column = Array.from({ length: 10_000 }, (_, k) => [20 + (k % 997) / 7]);
const cells = column.length;

/** The whole column through a function and through the bare loop that does the same arithmetic. */
function cellRows(): Row[] {
  const around = () => column.map(([x]) => [Math.PI * x]);
  const yards = () => column.map(([x]) => [((Math.PI * x * x) / 4 / 27) * (3 / 12)]);
  const matrix = math.matrix(column);
  const perCell = (work: () => unknown) => nanoseconds(work) / cells;
  const bar = { bar: 50, against: "slower" } as const;
  const circumference = perCell(() => calls.CIRCUMFERENCE(column));
  const footing = perCell(() => calls.FOOTING(column, 3));
  return [
    { what: "CIRCUMFERENCE, a cell", figure: circumference, unit: "ns", peer: "bare loop", peerFigure: perCell(around), ...bar },
    {
      what: "CIRCUMFERENCE, a cell", figure: circumference, unit: "ns",
      peer: "mathjs", peerFigure: perCell(() => math.multiply(Math.PI, matrix)),
    },
    { what: "FOOTING, a cell", figure: footing, unit: "ns", peer: "bare loop", peerFigure: perCell(yards), ...bar },
    {
      what: "FOOTING, a cell", figure: footing, unit: "ns",
      peer: "mathjs", peerFigure: perCell(() => math.multiply(math.dotPow(matrix, 2), (Math.PI / 4 / 27) * (3 / 12))),
    },
    { what: "CIRCUMFERENCE, 10 000 cells", figure: (circumference * cells) / 1e6, unit: "ms", bar: 1 },
  ];
} // prettier-ignore

/** The same circle by halving the bracket until nothing is left of it. */
function bisected(chords: Chord[]): number {
  const turn = (d: number) =>
    chords.reduce((sum, { length, count }) => sum + count * 2 * Math.asin(Math.min(1, length / d)), 0);
  let low = Math.max(...chords.map(({ length }) => length));
  let high = chords.reduce((sum, { length, count }) => sum + length * count, 0);
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2;
    if (turn(middle) > 2 * Math.PI) low = middle;
    else high = middle;
  }
  return low;
}

function polygonRows(): Row[] {
  const plain = [{ length: 12, count: 18 }, { length: 10, count: 1 }];
  const mixed = [{ length: 12, count: 9 }, { length: 10, count: 5 }, { length: 6, count: 3 }, { length: 8, count: 2 }];
  const row = (what: string, chords: Chord[]): Row => ({
    what, figure: nanoseconds(() => circumcircle(chords)) / 1000, unit: "µs",
    peer: "60 bisections", peerFigure: nanoseconds(() => bisected(chords)) / 1000, bar: 5,
  });
  return [row("PIN_CIRCLE of 19 panels and gates", plain), row("PIN_CIRCLE of 19, mixed lengths", mixed)];
} // prettier-ignore

type Solver = Awaited<ReturnType<typeof highsLoader>>;

const sum = (terms: [number, string][]) =>
  terms.map(([factor, name]) => `${factor >= 0 ? "+" : "-"} ${Math.abs(factor)} ${name}`).join(" ");

function loadRows(solver: Solver): Row[] {
  const jobs: { need: number; sizes: number[]; prices?: number[] }[] = [
    { need: 37.29, sizes: [16, 10] },
    { need: 212.4, sizes: [20, 16, 13.5, 8], prices: [182, 149, 131, 90] },
    { need: 884.2, sizes: [18, 14.8, 11.2, 7.4], prices: [171, 143, 112, 79] },
  ];
  return jobs.map(({ need, sizes, prices }) => {
    const names = sizes.map((_, k) => `n${k}`);
    const cost = sum(names.map((name, k) => [prices?.[k] ?? 1, name]));
    const volume = sum(names.map((name, k) => [sizes[k], name]));
    const model = `Minimize\n cost: ${cost}\nSubject To\n need: ${volume} >= ${need * 0.95}\nGeneral\n ${names.join(" ")}\nEnd`;
    const trucks = sizes.map((size, k) => ({ size, price: prices?.[k] }));
    return {
      what: `LOADS of ${need} cu yd, ${sizes.length} trucks${prices ? ", priced" : ""}`,
      figure: nanoseconds(() => loads(need, trucks, 5)) / 1000,
      unit: "µs",
      peer: "HiGHS, first aim alone",
      peerFigure: nanoseconds(() => solver.solve(model)) / 1000,
      bar: 20,
      against: "faster",
    };
  });
}

const SOLVER_SECONDS = 2;
const MIX_GATES = [12, 10, 8, 4];
/** Invented prices: a shorter panel is dearer a foot. */
const panelPrice = (length: number, k: number) => Math.round(40 + 11 * length + ((37 * k) % 17));
const asks = [
  { fit: "nearest", priced: false },
  { fit: "at least", priced: false },
  { fit: "at most", priced: false },
  { fit: "at least", priced: true },
  { fit: "at most", priced: true },
] as const;

/** The small job, and the far end: six lengths, mostly under 6 ft, with every fit. */
const mixJobs = [
  { diameter: 100, lengths: [12, 10, 6], gates: [8], fit: "nearest", priced: false, bar: 0.2 },
  ...[
    [16, 14, 12, 10, 8, 5.5],
    [12, 5.9, 5.3, 4.7, 4.1, 3.3],
    [5.5, 5, 4.5, 4, 3.5, 3],
  ].flatMap((lengths) => asks.map((ask) => ({ diameter: 200, lengths, gates: MIX_GATES, ...ask, bar: 20 }))),
] as const;

/** The same for a solver of linear problems in whole numbers: what each length adds, and between what the sum may lie. */
function mixModel({ diameter, lengths, gates, fit, priced }: (typeof mixJobs)[number]): string {
  // The longest gate is longer than most panels; where it is not, the solver's problem is as hard, though not the same.
  const circle = (size: number) => Math.hypot(size, fit === "at least" ? Math.max(...gates) : 0);
  const weigh = (length: number, size: number) =>
    fit === "nearest" ? length : 2 * Math.asin(Math.min(1, length / circle(size)));
  const rest = (size: number) =>
    gates.reduce((left, gate) => left - weigh(gate, size), fit === "nearest" ? Math.PI * size : 2 * Math.PI);
  const names = lengths.map((_, k) => `n${k}`);
  const whole = (size: number) => sum(names.map((name, k) => [weigh(lengths[k], size), name]));
  const cost = sum(names.map((name, k) => [panelPrice(lengths[k], k), name]));
  const [low, high] = fit === "at least" ? [diameter, diameter + 1] : [diameter - 1, diameter];
  const within = ` low: ${whole(low)} >= ${rest(low)}\n high: ${whole(high)} <= ${rest(high)}`;
  const sides = { nearest: "- over + under", "at least": "- over", "at most": "+ under" }[fit];
  const near = ` near: ${whole(diameter)} ${sides} = ${rest(diameter)}`;
  const off = { nearest: "over + under", "at least": "over", "at most": "under" }[fit];
  const [aim, rows] = priced ? [cost, within] : [off, near];
  return `Minimize\n aim: ${aim}\nSubject To\n${rows}\nGeneral\n ${names.join(" ")}\nEnd`;
}

function mixRows(solver: Solver): Row[] {
  return mixJobs.map((job) => {
    const { diameter, lengths, gates, fit, priced, bar } = job;
    const panels = lengths.map((length, k) => ({ length, ...(priced && { price: panelPrice(length, k) }) }));
    const model = mixModel(job);
    return {
      what: `PANEL_MIX of ${lengths.join(", ")} ft at ${diameter} ft, ${fit}${priced ? ", priced" : ""}`,
      figure:
        nanoseconds(() => panelMix({ diameter, panels, gates, pinGap: 0, tolerance: 1, fit, priced })) / 1e6,
      unit: "ms",
      peer: `HiGHS, first aim alone, ${SOLVER_SECONDS} s at most`,
      peerFigure: onceIn(() => solver.solve(model, { time_limit: SOLVER_SECONDS })),
      bar,
    };
  });
}

/** The time of one call, ms: for a peer that may take seconds. */
function onceIn(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/** What the panel's section of best mixes figures a moment after the last keystroke: the job priced with each of five mixes. */
function bestMixesRow(): Row {
  const job = { ...newJob(), gate_1: 10, panel_2: 10, panel_3: 6 };
  const figure = nanoseconds(() => panelMixes(job, examplePrices)) / 1e6;
  return { what: "Best mixes of panels, after the last keystroke", figure, unit: "ms" };
}

/** What the worksheet functions take, beside a peer that does the same in this run. */
export async function functionRows(): Promise<Row[]> {
  const solver = await highsLoader();
  return [...cellRows(), ...polygonRows(), ...loadRows(solver), ...mixRows(solver), bestMixesRow()];
}
