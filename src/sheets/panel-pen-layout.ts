import { slotKeys } from "../estimate/fields";
import { figureField } from "../estimate/figure-list";
import { byOtherOf } from "../estimate/by-other";
import { type Job } from "../estimate/job";
import { type PanelPen } from "../estimate/panel-pen";
import { placed, type Placed } from "../estimate/site";
import { type Stake } from "../fence/layout";
import { panelLayout } from "../fence/panel-layout";
import { INCHES_PER_FOOT } from "../units/conversion";
import { call, cell, minus, number, over, pen as ask, plus, range } from "./expression";
import { type LayoutData, type UsedInput } from "./layout-data";
import { labels } from "./layout-messages";
import { askedOf, gatesAlike, headOf, inputsOn, withSides, type LayoutIssue } from "./layout-parts";
import { usedPlace } from "./layout-places";

/** The layout of a job's panel pen as its layout sheet shows it. Refuses as panelLayout does. */
export function panelPenLayout(
  job: Job,
  pen: PanelPen,
  { revision, date, estimate }: LayoutIssue,
): LayoutData {
  const panels = pen.lengths.flatMap((length, k) =>
    length !== null && pen.counts[k] ? [{ length, count: pen.counts[k] }] : [],
  );
  const parts = { panels, gates: pen.gates, pinGap: pen.pinGap };
  const laid = placed(job, pen, (bearing) => panelLayout(parts, bearing));
  const radius = pen.pinCircle / 2;
  const pieces = [
    ...panels.map(({ length, count }) => ({ what: "panel" as const, length, count })),
    ...gatesAlike(pen.gates).map((gate) => ({
      ...gate,
      opening: pen.openings[pen.gates.indexOf(gate.length)],
      ...(pen.bow !== null && { bow: pen.bow }),
    })),
  ];
  const { used, terms } = usedInputs(job, pen, laid, estimate);
  const sizeOf = (key: string) => ({ label: figureField(key).label });
  const pinCircle = ask("PIN_CIRCLE", ...terms.slice(0, 4));
  const thickness = over(number(terms[5]), INCHES_PER_FOOT);
  return {
    ...headOf(job, pen, radius, laid, pieces),
    revision,
    date,
    measuredTo: "pin center",
    pieces,
    sizes: [
      { ...sizeOf("pin_circle"), feet: pinCircle },
      {
        ...sizeOf("inside_clear"),
        feet: call("MAX", 0, minus(ask("INSIDE_CLEAR", ...terms.slice(0, 4)), thickness)),
      },
      { ...sizeOf("outside_size"), feet: plus(pinCircle, thickness) },
      { ...sizeOf("distance_around"), feet: pen.distanceAround },
    ],
    bearing: terms[4],
    radius: over(pinCircle, 2),
    cutLists: [],
    stakes: withSides(laid.stakes, pen, askedOf(job).hand, "pin", byOtherOf(job, pen)),
    asks: ask("PANEL_LAYOUT", ...terms.slice(0, 5)),
    used,
  };
}

/** The inputs of PANEL_LAYOUT as they stand on the sheet, and the terms by which its formulas name them. */
function usedInputs(job: Job, pen: PanelPen, laid: Placed<Stake>, estimate: LayoutIssue["estimate"]) {
  const { now, input, bearing, around } = inputsOn(estimate);
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
    bearing(laid),
    input("north", job.north ?? ""),
    input("panel_thickness", Number(job.panel_thickness ?? 0)),
    input("frame_less_opening", job.frame_less_opening),
    input("bow_height", job.bow_height),
    input("size", job.size),
    input("size_means", job.size_means),
    ...around(job),
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
    cell(from(after + 3)),
  ];
  return { used, terms };
}
