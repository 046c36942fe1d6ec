import { planDrawing } from "../drawing/plan";
import { planFrame } from "../drawing/frame";
import { fieldOf, languages, slotKeys, type Hand, type Language, type North } from "../estimate/fields";
import { figureField } from "../estimate/figure-list";
import { type Job } from "../estimate/job";
import { piecesAround, type PanelPen } from "../estimate/panel-pen";
import { panelLayout } from "../fence/panel-layout";
import { squareReferenceStakes } from "../fence/reference-stakes";
import { bearingTo } from "../geometry/point";
import { roundUp } from "../units/rounding";
import { type Place } from "./address";
import { cell, over, pen as ask, range } from "./expression";
import { type GateSide, type LaidStake, type LayoutData, type UsedInput } from "./layout-data";
import { labels, sentences } from "./layout-messages";
import { usedPlace } from "./layout-places";

/** What the caller of a layout sheet knows beside the job. */
export interface LayoutIssue {
  revision: number;
  date: string;
  /** The estimate's sheet and where its keyed cells stand; the sheet then says when they part from what it used. */
  estimate?: { name: string; cells: Record<string, Place> };
}

/** Reference stakes stand so far outside the pins: 10 ft, or a fifth of the radius (common practice, no source). */
const outside = (radius: number) => Math.max(10, radius / 5);

/** How wide the plan is drawn, pixels, and points in a pixel. */
const drawn = 460;
const points = 0.75;

/** The layout of a job's panel pen as its layout sheet shows it. Refuses as panelLayout does. */
export function panelPenLayout(
  job: Job,
  pen: PanelPen,
  { revision, date, estimate }: LayoutIssue,
): LayoutData {
  const language: Language = languages[job.language as keyof typeof languages] ?? "en";
  const bearing = Number(job.gate_bearing ?? 0);
  const north = (job.north ?? fieldOf("north").default) as North;
  const hand = (job.gate_hand ?? fieldOf("gate_hand").default) as Hand;
  const panels = pen.lengths.flatMap((length, k) =>
    length !== null && pen.counts[k] ? [{ length, count: pen.counts[k] }] : [],
  );
  const stakes = panelLayout({ panels, gates: pen.gates, pinGap: pen.pinGap }, bearing);
  const radius = pen.pinCircle / 2;
  const references = referencesOf(radius, bearing);
  const pieces = [
    ...panels.map(({ length, count }) => ({ what: "panel" as const, length, count })),
    ...[...new Set(pen.gates)].map((length) => ({
      what: "gate" as const, length, count: pen.gates.filter((gate) => gate === length).length,
    })),
  ]; // prettier-ignore
  const { used, terms } = usedInputs(job, pen, bearing, estimate);
  const sizeOf = (key: string) => ({ label: figureField(key).label });
  const pinCircle = ask("PIN_CIRCLE", ...terms.slice(0, 4));
  return {
    language,
    title: [job.job_name, job.site].filter(Boolean).join("   "),
    revision,
    date,
    measuredTo: "pin center",
    pieces,
    sizes: [
      { ...sizeOf("pin_circle"), feet: pinCircle },
      { ...sizeOf("inside_clear"), feet: ask("INSIDE_CLEAR", ...terms.slice(0, 4)) },
      { ...sizeOf("distance_around"), feet: pen.distanceAround },
    ],
    bearing: terms[4],
    north,
    hasGate: pen.gates.length > 0,
    radius: over(pinCircle, 2),
    references,
    stakes: withSides(stakes, pen, hand),
    asks: ask("PANEL_LAYOUT", ...terms),
    used,
    plan: {
      width: drawn * points,
      height: Math.round(planFrame(drawn).height * points),
      svg: planDrawing(pen, { width: drawn, bearing, north, numbered: true, references, language }),
      description: pieces
        .map(({ what, count, length }) => sentences[language][what](count, length))
        .join(", "),
    },
  };
}

function referencesOf(radius: number, bearing: number): LayoutData["references"] {
  const off = roundUp(radius + outside(radius)) - radius;
  const { stakes, distances } = squareReferenceStakes({ east: 0, north: 0 }, radius, off, bearing + 90);
  const [a, b] = stakes.map((stake, k) => ({
    name: "AB"[k],
    turn: 90 * (k + 1),
    bearing: bearingTo({ east: 0, north: 0 }, stake),
    distance: distances[k],
  }));
  return [a, b];
}

/** What stands at each pin. Walked clockwise, a gate begins at the right of who faces the pen from outside. */
function withSides(stakes: ReturnType<typeof panelLayout>, pen: PanelPen, hand: Hand): LaidStake[] {
  const isGate = piecesAround(pen).map(({ kind }) => kind === "gate");
  const [begins, ends]: GateSide[] = hand === "right" ? ["hinge", "latch"] : ["latch", "hinge"];
  return stakes.map(({ atGate, ...stake }, k) => ({
    ...stake,
    kind: atGate ? "gate pin" : "pin",
    sides: [...(isGate.at(k - 1) ? [ends] : []), ...(isGate[k] ? [begins] : [])],
  }));
}

/** The inputs of PANEL_LAYOUT as they stand on the sheet, and the terms by which its formulas name them. */
function usedInputs(job: Job, pen: PanelPen, bearing: number, estimate: LayoutIssue["estimate"]) {
  const now = (key: string): Pick<UsedInput, "now"> =>
    estimate && key in estimate.cells
      ? { now: { sheet: estimate.name, row: estimate.cells[key].row, column: estimate.cells[key].column } }
      : {};
  const input = (key: string, value: UsedInput["value"]): UsedInput => ({
    label: fieldOf(key).label,
    value,
    ...now(key),
  });
  const [panels, gates] = [slotKeys("panel"), slotKeys("gate")];
  const used = [
    ...panels.map((key, k) => input(key, pen.lengths[k])),
    ...panels.map((key, k): UsedInput => ({
      label: { en: `${labels.countOf.en} ${k + 1}`, es: `${labels.countOf.es} ${k + 1}` },
      value: pen.counts[k],
      ...now(`${key}_count`),
    })),
    ...gates.map((key) => input(key, job[key])),
    input("pin_gap", Number(job.pin_gap ?? 0)),
    input("gate_bearing", bearing),
    input("north", job.north ?? ""),
  ];
  const from = (k: number) => usedPlace(k);
  const list = (first: number, count: number) => range(from(first), from(first + count - 1));
  const after = 2 * panels.length + gates.length;
  const terms = [
    list(0, panels.length),
    list(panels.length, panels.length),
    list(2 * panels.length, gates.length),
    cell(from(after)),
    cell(from(after + 1)),
  ];
  return { used, terms };
}
