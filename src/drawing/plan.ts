import { type ByOther } from "../estimate/by-other";
import { isArena, isPosted, type Pen } from "../estimate/pen";
import { bearingAtFoot } from "../estimate/pieces-on-ground";
import { type OffSize } from "../estimate/off-sizes";
import { type Hand, type Language, type North } from "../estimate/fields";
import { penSentence } from "../estimate/sentences";
import { type Point as Place } from "../geometry/point";
import { feetInches } from "../units/feet-inches";
import { arenaMarks, arenaWords } from "./arena-marks";
import { byOtherLabels, byOtherLine, byOtherStake } from "./by-other-marks";
import { acrossWords, dimensions } from "./dimensions";
import { planFrame, type PlanColors, type Point } from "./frame";
import { gateLabels } from "./gate-label";
import { gateSwings } from "./gate-swing";
import { messages, type PlanWords } from "./messages";
import { offLabels } from "./off-labels";
import { northArrow } from "./north-arrow";
import { halfExtent, placedPieces, type PlacedPiece } from "./pieces";
import { referenceMarks, type Reference } from "./reference-marks";
import { shape, svgText, type Shape } from "./shape";
import { siteMarks, siteReach, type PlanSite } from "./site-marks";
import { stakeNumbers } from "./stake-numbers";

/** How a plan is drawn. What a crew sets stakes by is on it where it is asked for. */
export interface PlanOptions {
  /** Pixels, 100 and up; the height follows. */
  width?: number;
  colors?: PlanColors;
  /** Where the middle of the first gate lies, degrees clockwise from the top; at the foot unless told. */
  bearing?: number;
  /** The north that the top is: an arrow names it, and the gate says its bearing. */
  north?: North;
  /** A picture that no one points at: no names of pieces, and nothing unseen to point at. */
  still?: boolean;
  /** Numbers the stakes, as many as there is room for. */
  numbered?: boolean;
  /** Stakes outside the pen, from which its center can be set again. */
  references?: readonly Reference[];
  /** The hinges of an arena's gates, as seen from outside; right unless told. */
  hand?: Hand;
  /** How the gates swing and what is near, laid out with the bearing of the plan. */
  site?: PlanSite;
  /** The pieces that another estimate brings, and the stakes that it sets, in the order they stand. */
  byOther?: ByOther;
  language?: Language;
  /** The sizes asked for that will not close. */
  off?: readonly OffSize[];
}

/** Pixels around the pen for the numbers of its stakes. */
const rim = 18;

/** How many times as large as a pin a post is drawn. */
const POST = 1.6;

const printed: PlanColors = { ink: "#000000", faint: "#555555", paper: "#ffffff" };

/**
 * The plan of a pen or an arena to scale: panels, bays and gates as the straight pieces they are, a pin or post at each
 * joint, the center stake, and the sizes across; of an arena its diagonals and arc centers. Gates are drawn double, so they can be told without color. Every piece carries its
 * place in `data-piece`, and its name and length as its title.
 */
export function planShape(pen: Pen, options: PlanOptions = {}): Shape {
  const { width = 318, colors = printed, bearing, north, numbered, references = [], site, byOther } = options;
  const words = messages[options.language ?? "en"];
  const half = halfExtent(pen, bearing);
  const farthest = Math.max(site ? siteReach(site) : 0, ...references.map(({ distance }) => distance));
  const reach = Math.max(1, farthest / half);
  const frame = planFrame(width, { reach, rim: numbered ? rim : 0 });
  const pieces = placedPieces(pen, frame, bearing, words, byOther?.pieces);
  const said = north && !isArena(pen) ? (bearing ?? 180) : undefined;
  const { center, radius } = frame;
  const marks = isArena(pen)
    ? arenaMarks(
        pen,
        { ...frame, scale: radius / half, bearing: bearing ?? bearingAtFoot(pen) },
        numbered ? rim : 0,
        colors,
        words,
      )
    : dimensions(pen, pieces, frame, colors, words);
  const pin = Math.min((pieces.length > 90 ? 1.2 : 2.2) * (isPosted(pen) ? POST : 1), mostPin(pieces));
  const scale = radius / half;
  const ground = {
    spot: ({ east, north: up }: Place) => ({ x: center.x + east * scale, y: center.y - up * scale }),
    reach: frame.outer / scale,
  };
  const around = site ? siteMarks(site, ground, colors) : [];
  const numbers = [
    ...(numbered ? stakeNumbers(pieces, colors.paper) : []),
    ...references.flatMap((reference) => referenceMarks(reference, half, frame, colors)),
    ...(north ? northArrow(words.north(north), width, colors) : []),
  ];
  const beside = [
    ...numbers,
    ...byOtherLabels(pieces, words.byOther, frame, colors.paper, [...marks, ...around, ...numbers]),
  ];
  const gates = pieces.filter(({ kind }) => kind === "gate");
  const sayings = gates.map(({ leaves, length, byOther: isOther }, k) => {
    const size = words.gateLabel(leaves, feetInches(length), k === 0 ? said : undefined);
    return isOther ? `${size}, ${words.byOther}` : size;
  });
  const others = [...marks, ...around, ...beside];
  const labels = gateLabels(
    gates,
    sayings,
    { frame, rim: numbered ? rim : 0, isArena: isArena(pen) },
    colors.paper,
    others,
  );
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
    shape("title", {}, isArena(pen) ? words.arenaTitle : words.title),
    shape("desc", {}, options.language === "es" ? sizeWords(pen, words) : penSentence(pen)),
    ...around,
    ...marks,
    ...(isArena(pen) && !site
      ? gates.flatMap((gate) => gateSwings(gate, options.hand ?? "right", colors))
      : []),
    ...pieces.map((piece, place) => pieceShape(piece, place, colors, options.still)),
    ...pieces.map(({ from }, k) =>
      byOther?.stakes[k]
        ? byOtherStake(from, pin + 0.4, colors)
        : shape("circle", { cx: from.x, cy: from.y, r: pin }),
    ),
    ...beside,
    ...labels,
    ...offLabels(options.off ?? [], pieces, frame, words, colors.paper, [...others, ...labels]),
  );
}

/** The plan as SVG text, for a picture in a sheet: without what only a pointer meets. */
export const planDrawing = (pen: Pen, options?: PlanOptions): string =>
  svgText(still(planShape(pen, options)));

/** A drawing without the names and the reach of its pieces. */
const still = (whole: Shape): Shape => ({
  ...whole,
  children: whole.children.map((child) => {
    if (typeof child === "string" || !("data-piece" in child.attributes)) return child;
    const seen = child.children.filter(
      (part) => typeof part === "string" || (part.tag !== "title" && !("pointer-events" in part.attributes)),
    );
    return { ...child, attributes: {}, children: seen };
  }),
});

/** The largest pin that leaves every second piece's breadth between two, in pixels. */
const mostPin = (pieces: readonly PlacedPiece[]) =>
  Math.max(
    1,
    pieces.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0) /
      pieces.length /
      3,
  );

const sizeWords = (pen: Pen, words: PlanWords) =>
  isArena(pen) ? arenaWords(pen, words) : acrossWords(pen, words);

function pieceShape(piece: PlacedPiece, place: number, colors: PlanColors, still = false): Shape {
  const { kind, name, from, to } = piece;
  const { ink, paper } = colors;
  const ends = { x1: from.x, y1: from.y, x2: to.x, y2: to.y };
  const drawn = piece.byOther
    ? byOtherLine(piece, colors)
    : kind === "gate"
      ? [
          shape("line", { ...ends, stroke: ink, "stroke-width": 9 }),
          shape("line", { ...inset(from, to, 2), stroke: paper, "stroke-width": 5 }),
        ]
      : [shape("line", { ...ends, stroke: ink, "stroke-width": 3 })];
  if (still) return shape("g", { class: kind }, ...drawn);
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
