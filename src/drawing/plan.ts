import { type PanelPen } from "../estimate/panel-pen";
import { penSentence } from "../estimate/sentences";
import { feetInches } from "../units/feet-inches";
import { dimensions } from "./dimensions";
import { bearingOf, onCircle, planFrame, type PlanColors, type PlanFrame, type Point } from "./frame";
import { label } from "./label";
import { messages } from "./messages";
import { middleOf, placedPieces, type PlacedPiece } from "./pieces";
import { shape, svgText, type Shape } from "./shape";

/** How a plan is drawn: its width in pixels (100 and up; its height follows), and its colors. */
export interface PlanOptions {
  width?: number;
  colors?: PlanColors;
}

const printed: PlanColors = { ink: "#000000", faint: "#555555", paper: "#ffffff" };

/**
 * The plan of a panel pen to scale: panels and gates as the straight pieces they are, a pin at each joint, the center
 * stake, and the sizes across. Gates are drawn double, so they can be told without color. Every piece carries its
 * place in `data-piece`, and its name and length as its title.
 */
export function planShape(pen: PanelPen, { width = 318, colors = printed }: PlanOptions = {}): Shape {
  const frame = planFrame(width);
  const pieces = placedPieces(pen, frame);
  const { center, radius } = frame;
  const pin = pieces.length > 90 ? 1.2 : 2.2;
  return shape(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${width} ${frame.height}`,
      width,
      height: frame.height,
      role: "img",
      "font-family": "system-ui, sans-serif",
      "font-size": 14,
      fill: colors.ink,
    },
    shape("title", {}, messages.title),
    shape("desc", {}, penSentence(pen)),
    shape("circle", {
      cx: center.x, cy: center.y, r: radius, fill: "none", stroke: colors.faint, "stroke-width": 0.75, "stroke-dasharray": "2 4",
    }), // prettier-ignore
    ...dimensions(pen, pieces, frame, colors),
    ...pieces.map((piece, place) => pieceShape(piece, place, colors)),
    ...pieces.map(({ from }) => shape("circle", { cx: from.x, cy: from.y, r: pin })),
    ...pieces.filter(({ kind }) => kind === "gate").map((gate) => gateLabel(gate, frame, colors.paper)),
  );
}

/** The plan as SVG text, for a sheet or a page of its own. */
export const planDrawing = (pen: PanelPen, options?: PlanOptions): string => svgText(planShape(pen, options));

function pieceShape({ kind, name, from, to }: PlacedPiece, place: number, { ink, paper }: PlanColors): Shape {
  const ends = { x1: from.x, y1: from.y, x2: to.x, y2: to.y };
  const drawn =
    kind === "gate"
      ? [
          shape("line", { ...ends, stroke: ink, "stroke-width": 9 }),
          shape("line", { ...inset(from, to, 2), stroke: paper, "stroke-width": 5 }),
        ]
      : [shape("line", { ...ends, stroke: ink, "stroke-width": 3 })];
  // An unseen wider line, so that a finger or a shaking hand still meets the piece.
  const reach = shape("line", { ...ends, stroke: "none", "stroke-width": 18, "pointer-events": "stroke" });
  return shape("g", { "data-piece": place, class: kind }, shape("title", {}, name), ...drawn, reach);
}

/** A line that ends so many pixels inside both of its points; on a shorter one, at its middle. */
function inset(from: Point, to: Point, by: number) {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const part = Math.min(0.5, by / length);
  const [x, y] = [(to.x - from.x) * part, (to.y - from.y) * part];
  return { x1: from.x + x, y1: from.y + y, x2: to.x - x, y2: to.y - y };
}

/** A gate's label stands inside the pen, beside the gate, so that the pen can fill the plan's width. */
function gateLabel(gate: PlacedPiece, { center, radius }: PlanFrame, paper: string): Shape {
  const angle = bearingOf(middleOf(gate), center);
  const at = onCircle(center, radius - 12, angle);
  const across = Math.cos(angle);
  return label(
    messages.gateLabel(feetInches(gate.length)),
    { x: at.x, y: at.y + 5 - 8 * Math.sin(angle) },
    paper,
    { "text-anchor": across > 0.4 ? "end" : across < -0.4 ? "start" : "middle" },
  );
}
