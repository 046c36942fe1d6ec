import { type Estimate } from "../estimate/estimate";
import { slotKeys } from "../estimate/fields";
import { baseLayer, comes, footingLayer } from "../estimate/layers";
import { answerOf, type Job } from "../estimate/job";
import { mixOf, type PanelPen } from "../estimate/panel-pen";
import { gatePostWidth } from "../estimate/fence-body";
import { type Pen } from "../estimate/pen";
import { type PostedPen } from "../estimate/post-pen";
import {
  amount, arrayConstant, ask, cellsOf, countsTerm, eachOf, figureAnswer, listTerm, total,
  type ListTerm, type SheetAnswer,
} from "./answer-terms"; // prettier-ignore
import { arenaAnswers } from "./arena-answers";
import { INCHES_PER_FOOT } from "../units/conversion";
import { call, minus, number, over, plus, times, type Expression } from "./expression";
import { type EstimateSheet } from "./keyed";
import { layerAnswers } from "./layer-answers";
import { messages } from "./messages";

/**
 * The answers that can stand alone in a cell, each as a formula on the job's present answers. Single sizes are plain
 * numbers. Several are the cells of the estimate where it holds these answers, else an array constant.
 */
export function answersOf(job: Job, made: Estimate, written?: EstimateSheet): SheetAnswer[] {
  const { pen: built, base, sand } = made;
  const fence = fenceAnswers(job, built, written);
  const area = fence.find(({ key }) => key === "area")!.says;
  return [
    ...fence,
    ...(comes(base) ? layerAnswers(job, baseLayer, base, area, written) : []),
    ...layerAnswers(job, footingLayer, sand, area, written),
  ];
}

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
  const counted = { list: "panel", values: closed.counts, keyOf: (slot: string) => slot } as const;
  const counts = countsTerm(job, counted, best, from);
  const thickness = over(Number(job.panel_thickness ?? 0), INCHES_PER_FOOT);
  const isThick = amount(job, "panel_thickness") !== undefined;
  const lessPanels = (clear: Expression) => (isThick ? call("MAX", 0, minus(clear, thickness)) : clear);
  const withPanels = (across: Expression) => (isThick ? plus(across, thickness) : across);
  const ofPen = (name: string) => ask(name, panels.term!, counts, gates.term, gap);
  return [
    ...eachOf(job, panels, counts, counted, messages.answers.panels),
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
  const cells =
    openings.length > 1
      ? cellsOf(
          slotKeys("leaf").map((key) => `${key}_opening`),
          written,
        )
      : undefined;
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

function around(panels: ListTerm, counts: Expression, gates: ListTerm, gap: number | undefined): Expression {
  const fence = total(panels, counts);
  const frames = gates.several ? call("SUM", gates.term) : gates.term;
  const whole = frames === undefined ? fence : plus(fence, frames);
  if (gap === undefined) return whole;
  const joints = plus(panels.several ? call("SUM", counts) : number(counts), gates.listed.length);
  return plus(whole, times(over(gap, 12), joints));
}
