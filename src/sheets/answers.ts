import { type Estimate } from "../estimate/estimate";
import { slotKeys, type SlotList } from "../estimate/fields";
import { figureField, type FigureKind } from "../estimate/figure-list";
import { answerOf, type Job } from "../estimate/job";
import { mixOf, type PanelPen } from "../estimate/panel-pen";
import { gatePostWidth } from "../estimate/fence-body";
import { type Pen } from "../estimate/pen";
import { type PostedPen } from "../estimate/post-pen";
import { arenaAnswers } from "./arena-answers";
import { INCHES_PER_FOOT } from "../units/conversion";
import {
  call,
  expression,
  minus,
  number,
  over,
  pen,
  plus,
  range,
  times,
  type Expression,
  type Term,
} from "./expression";
import { type EstimateSheet } from "./keyed";
import { messages } from "./messages";

/** One answer of a job, with the formula that works it out by itself in any cell. */
export interface SheetAnswer {
  key: string;
  label: string;
  unit: string;
  kind: FigureKind;
  value: number;
  says: Expression;
}

/** The filled places of a list of slots: each one's key, its size, and its place among those that a formula names. */
interface Listed {
  key: string;
  size: number;
  place: number;
}

/**
 * The answers that can stand alone in a cell, each as a formula on the job's present answers. Single sizes are plain
 * numbers. Several are the cells of the estimate where it holds these answers, else an array constant.
 */
export function answersOf(job: Job, made: Estimate, written?: EstimateSheet): SheetAnswer[] {
  const { pen: built, sand } = made;
  const fence = fenceAnswers(job, built, written);
  const area = fence.find(({ key }) => key === "area")!.says;
  const trucks = listTerm("truck", job, written);
  const need = ask("FILL", area, Number(job.depth ?? 0), amount(job, "overrun"), amount(job, "settle"));
  const best = ask("LOADS", need, trucks.term, amount(job, "short"));
  const loads = countsTerm("truck", job, sand.counts, best, written);
  const delivered = trucks.term === undefined ? need : total(trucks, loads);
  return [
    ...fence,
    figureAnswer("sand_need", sand.need, need),
    figureAnswer("sand_delivered", sand.delivered, delivered),
    { key: "sand_tons", label: messages.answers.tons, unit: "ton", kind: "yards", value: sand.tons, says: ask("TONS", delivered, Number(job.tons_per_cy)) },
    figureAnswer("depth_loose", sand.depthLoose, ask("DEPTH", delivered, area)),
    ...eachOf(job, trucks, loads, sand.counts, messages.answers.loads),
  ];
} // prettier-ignore

function fenceAnswers(job: Job, built: Pen, written?: EstimateSheet): SheetAnswer[] {
  if (built.structure === "panel pen") return panelAnswers(job, built, written);
  return built.structure === "post pen" ? postAnswers(job, built, written) : arenaAnswers(built);
}

/** The panels that close a pen, and what they make of it. */
function panelAnswers(job: Job, closed: PanelPen, written?: EstimateSheet): SheetAnswer[] {
  const { diameter, panels: listed, fit } = mixOf(job);
  const isLimited = listed.some(({ stock }) => stock !== Infinity);
  // The sheet keeps no stock in the order of the lengths alone, so that a limited mix names its own numbers.
  const from = isLimited ? undefined : written;
  const [panels, gates] = [listTerm("panel", job, from), listTerm("gate", job, written)];
  const gap = amount(job, "pin_gap");
  const wanted = fit === "nearest" ? undefined : fit;
  const stock = isLimited ? arrayConstant(listed.map(({ stock }) => stock || '"none"')) : undefined;
  const best =
    panels.several || isLimited
      ? ask("PANEL_MIX", diameter, panels.term, gates.term, gap, undefined, undefined, wanted, stock)
      : ask("PANELS", diameter, panels.term, gates.term, gap, wanted);
  const counts = countsTerm("panel", job, closed.counts, best, from);
  const thickness = over(Number(job.panel_thickness ?? 0), INCHES_PER_FOOT);
  const isThick = amount(job, "panel_thickness") !== undefined;
  const lessPanels = (clear: Expression) => (isThick ? call("MAX", 0, minus(clear, thickness)) : clear);
  const withPanels = (across: Expression) => (isThick ? plus(across, thickness) : across);
  const ofPen = (name: string) => ask(name, panels.term!, counts, gates.term, gap);
  return [
    ...eachOf(job, panels, counts, closed.counts, messages.answers.panels),
    figureAnswer("pin_circle", closed.pinCircle, ofPen("PIN_CIRCLE")),
    figureAnswer("inside_clear", closed.insideClear, lessPanels(ofPen("INSIDE_CLEAR"))),
    figureAnswer("outside_size", closed.outside, withPanels(ofPen("PIN_CIRCLE"))),
    figureAnswer("distance_around", closed.distanceAround, around(panels, counts, gates, gap)),
    figureAnswer("area", closed.area, ofPen("INSIDE_AREA")),
  ];
}

/** The posts and bays of a pen, on the post circle that it is built on. */
function postAnswers(job: Job, built: PostedPen, written?: EstimateSheet): SheetAnswer[] {
  const { postCircle: circle, gateChords, hung } = built;
  const openings = hung.map(({ opening }) => opening);
  const cells = openings.length > 1 ? cellsOf("leaf", "_opening", written) : undefined;
  const gates = openings.length > 0 ? [cells ?? arrayConstant(openings), gatePostWidth(job)] : [];
  const ofPosts = (name: string) => ask(name, circle, answerOf(job, "spacing"), ...gates);
  const [posts, bay] = [ofPosts("POSTS"), ofPosts("BAY")];
  const bays = minus(posts, gateChords.length);
  const square = (term: Expression) => times(term, term);
  const inBays = over(times(bays, bay, call("SQRT", minus(circle ** 2, square(bay)))), 4);
  const atGates = gateChords.map((chord) => (chord * Math.sqrt(circle ** 2 - chord ** 2)) / 4);
  const whole = (of: Expression, gates: number[]) => (gates.length > 0 ? plus(of, ...gates) : of);
  return [
    figureAnswer("posts", built.posts, posts),
    figureAnswer("bay", built.bay, bay),
    figureAnswer("distance_around", built.distanceAround, whole(times(bays, bay), gateChords)),
    figureAnswer("area", built.area, whole(inBays, atGates)),
  ];
}

/** An answer that is one of the estimate's figures. */
export function figureAnswer(key: string, value: number, says: Expression): SheetAnswer {
  const { label, unit, kind } = figureField(key);
  return { key, label: label.en, unit, kind, value, says };
}

/** The count of every place of a list: the user's own, else its place among the counts. */
function eachOf(
  job: Job,
  { listed, several }: ListTerm,
  counts: Expression,
  values: readonly (number | null)[],
  label: (size: number) => string,
): SheetAnswer[] {
  return listed.map(({ key, size, place }) => {
    const value = values[slotPlace(key)]!;
    const says = isOwn(job, key) ? expression(value) : several ? call("INDEX", counts, place) : counts;
    return { key, label: label(size), unit: "", kind: "whole", value, says };
  });
}

/** True where the user's own count stands in the place of the computed one. */
const isOwn = (job: Job, key: string) => (job[`${key}_use`] ?? null) !== null;

const slotPlace = (key: string) => Number(key.split("_")[1]) - 1;

/** A number that a formula leaves out where it is blank or 0. */
const amount = (job: Job, key: string) => Number(job[key] ?? 0) || undefined;

/** A function of this add-in without the arguments left out at its end. */
function ask(name: string, ...terms: (Term | undefined)[]): Expression {
  const used = terms.map((term) => term !== undefined).lastIndexOf(true);
  return pen(name, ...terms.slice(0, used + 1));
}

const arrayConstant = (values: readonly (number | string)[]): Term =>
  values.length === 1 && typeof values[0] === "number"
    ? values[0]
    : { kind: "verbatim", text: `{${values.join(";")}}` };

/** The cells of a list in one column of the estimate, if that is how they stand. */
function cellsOf(list: SlotList, suffix: string, written?: EstimateSheet): Expression | undefined {
  const cells = slotKeys(list).map((key) => written?.cells[key + suffix]);
  const [first, last] = [cells[0], cells.at(-1)];
  if (!first || !last || !written) return undefined;
  const inOrder = cells.every((one, k) => one && one.column === first.column && one.row === first.row + k);
  const place = ({ row, column }: typeof first) => ({ sheet: written.name, row, column });
  return inOrder ? range(place(first), place(last)) : undefined;
}

interface ListTerm {
  /** Left out where the list is empty. */
  term?: Term;
  several: boolean;
  listed: Listed[];
}

function listTerm(list: SlotList, job: Job, written?: EstimateSheet): ListTerm {
  const filled = slotKeys(list).filter((key) => job[key] !== null);
  const several = filled.length > 1;
  const cells = several ? cellsOf(list, "", written) : undefined;
  const listed = filled.map((key, k) => ({
    key,
    size: job[key] as number,
    place: cells ? slotPlace(key) + 1 : k + 1,
  }));
  if (filled.length === 0) return { several, listed };
  return { term: cells ?? arrayConstant(listed.map(({ size }) => size)), several, listed };
}

/** The counts beside a list: the best, or the user's own where there is one among them. */
function countsTerm(
  list: SlotList,
  job: Job,
  counts: readonly (number | null)[],
  best: Expression,
  written?: EstimateSheet,
): Expression {
  const filled = slotKeys(list).filter((key) => job[key] !== null);
  if (!filled.some((key) => isOwn(job, key))) return best;
  const cells =
    filled.length > 1 && cellsOf(list, "", written) ? cellsOf(list, "_count", written) : undefined;
  return cells ?? expression(arrayConstant(filled.map((key) => counts[slotPlace(key)] ?? 0)));
}

/** Sizes times counts, added up. */
const total = ({ term, several }: ListTerm, counts: Expression): Expression =>
  several ? call("SUMPRODUCT", term, counts) : times(term!, counts);

function around(panels: ListTerm, counts: Expression, gates: ListTerm, gap: number | undefined): Expression {
  const fence = total(panels, counts);
  const frames = gates.several ? call("SUM", gates.term) : gates.term;
  const whole = frames === undefined ? fence : plus(fence, frames);
  if (gap === undefined) return whole;
  const joints = plus(panels.several ? call("SUM", counts) : number(counts), gates.listed.length);
  return plus(whole, times(over(gap, 12), joints));
}
