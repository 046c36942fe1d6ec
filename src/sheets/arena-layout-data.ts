import { planDrawing } from "../drawing/plan";
import { offSizes } from "../estimate/off-sizes";
import { planFrame } from "../drawing/frame";
import { cutLists } from "../estimate/cut-list";
import { fieldsOf } from "../estimate/fields";
import { figureField } from "../estimate/figure-list";
import { byOtherOf } from "../estimate/by-other";
import { answerOf, type Job } from "../estimate/job";
import { panelArenaLayout } from "../estimate/panel-arena";
import { isPosted, type Arena } from "../estimate/pen";
import { postArenaLayout } from "../estimate/post-arena";
import { workFigures } from "../estimate/post-figures";
import { type PostWork } from "../estimate/post-work";
import { neighborsOf, placed, siteFindings } from "../estimate/site";
import { byOtherSentences, siteSentences } from "../estimate/site-sentences";
import { type ArenaStake } from "../fence/arena-layout";
import { referenceStakes } from "../fence/reference-stakes";
import { compass, type Point } from "../geometry/point";
import { rightTriangles, type RightTriangle } from "../geometry/three-four-five";
import { equal, roundUp } from "../units/rounding";
import { type LaidStake, type LayoutData, type UsedInput } from "./layout-data";
import { arenaLabels } from "./arena-layout-words";
import { piecesInWords } from "./layout-messages";
import {
  askedOf,
  drawn,
  gatesAlike,
  hungAlike,
  inputsOn,
  outside,
  points,
  withSides,
  type LayoutIssue,
} from "./layout-parts";
import { railNotes, withHole } from "./post-pen-layout";

/** A stake of an arena, and the part of the fence that it stands on. */
export type LaidArenaStake = LaidStake & Pick<ArenaStake, "side">;

/** All that the layout sheet of an arena shows. */
export interface ArenaLayoutData extends LayoutData {
  stakes: readonly LaidArenaStake[];
  /** Clockwise from near left, and which of them have no stake of the fence. */
  corners: readonly Point[];
  apart: boolean;
  arcCenters: readonly Point[];
  /** Degrees from north, of the left side from near to far. */
  heading: number;
  triangles: readonly RightTriangle[];
}

const ORIGIN: Point = { east: 0, north: 0 };

/** The layout of a job's arena as its layout sheet shows it, one row a pin or post. Refuses as the layout does. */
export function arenaLayoutData(
  job: Job,
  arena: Arena,
  work: PostWork | undefined,
  { revision, date, estimate }: LayoutIssue,
): ArenaLayoutData {
  const { language, north, hand } = askedOf(job);
  const layoutAt = (bearing: number) =>
    isPosted(arena) ? postArenaLayout(job, arena.line, bearing) : panelArenaLayout(job, bearing);
  const { bearing: heading, center, over } = placed(job, arena, (bearing) => layoutAt(bearing).stakes);
  const laid = layoutAt(heading);
  const arcCenters = "arcCenters" in laid ? laid.arcCenters : [];
  const rounded = isPosted(arena) && arena.line.cornerRadius > 0;
  const byOther = byOtherOf(job, arena);
  const stands = isPosted(arena) ? "post" : "pin";
  const stakes = withSides(laid.stakes, arena, hand, stands, byOther).map((stake, k): LaidArenaStake => {
    const { place, side, atGate } = laid.stakes[k];
    const kind = !atGate && (place === "corner" || place === "tangent point") ? place : stake.kind;
    return { ...(work ? withHole(stake, work) : stake), kind, side };
  });
  const pieces = piecesOf(arena);
  const references = referencesOf(arena, heading);
  const found = siteFindings(job, arena, heading);
  return {
    language,
    title: [job.job_name, job.site].filter(Boolean).join("   "),
    revision,
    date,
    measuredTo: isPosted(arena) ? "post center" : "pin center",
    pieces,
    sizes: sizesOf(arena),
    bearing: heading,
    north,
    hasGate: arena.gates.length > 0,
    references,
    center,
    over,
    notes: [
      ...byOtherSentences(job, arena, language),
      ...siteSentences(found, answerOf(job, "turning_room"), language),
      ...(isPosted(arena) ? railNotes(job, language) : []),
    ],
    stakes,
    cutLists: work ? cutLists(job, work) : [],
    corners: laid.corners,
    apart: rounded,
    arcCenters,
    heading,
    triangles: trianglesFor(arena),
    used: usedInputs(job, arena, work, center ? heading : undefined, estimate),
    plan: {
      width: drawn * points,
      height: Math.round(planFrame(drawn).height * points),
      svg: planDrawing(arena, {
        width: drawn,
        bearing: heading,
        north,
        numbered: true,
        references,
        site: { findings: found, neighbors: neighborsOf(job) },
        byOther,
        off: offSizes(job, arena),
        language,
      }),
      description: pieces.map((piece) => piecesInWords(piece, language)).join(", "),
    },
  };
}

/** Panels, or bays of each length, and gates. */
function piecesOf(arena: Arena): LayoutData["pieces"] {
  if (!isPosted(arena))
    return [{ what: "panel", length: arena.panel, count: arena.panels }, ...gatesAlike(arena.gates)];
  const { stakes } = arena.layout;
  const bays = stakes.flatMap(({ gate }, k) =>
    gate === undefined ? [stakes[(k + 1) % stakes.length].chord] : [],
  );
  const alike: { what: "bay"; length: number; count: number }[] = [];
  for (const length of bays) {
    const same = alike.find((one) => equal(one.length, length));
    if (same) same.count++;
    else alike.push({ what: "bay", length, count: 1 });
  }
  return [...alike, ...hungAlike(arena.hung)];
}

function sizesOf(arena: Arena): LayoutData["sizes"] {
  const { length, width } = isPosted(arena) ? arena.line : arena;
  const [first, second] = arena.layout.diagonals;
  const clear = isPosted(arena) ? arena.sizes["inside clear"] : undefined;
  const radius = isPosted(arena) ? arena.line.cornerRadius : 0;
  const size = (key: string, feet: number) => ({ label: figureField(key).label, feet });
  return [
    size("built_length", length),
    size("built_width", width),
    ...(clear ? [size("clear_length", clear.length), size("clear_width", clear.width)] : []),
    ...(radius > 0 ? [size("built_radius", radius)] : []),
    size("diagonal_1", first),
    size("diagonal_2", second),
    size("distance_around", arena.distanceAround),
  ];
}

/** A and B on the two axes, past the far end and past the right side. */
function referencesOf(arena: Arena, heading: number): LayoutData["references"] {
  const { length, width } = isPosted(arena) ? arena.line : arena;
  const past = outside(Math.max(length, width) / 2);
  const off = (side: number) => roundUp(side / 2 + past);
  const sighted = [
    { name: "A", turn: 0, bearing: compass(heading), distance: off(length) },
    { name: "B", turn: 90, bearing: compass(heading + 90), distance: off(width) },
  ] as const;
  referenceStakes(ORIGIN, Math.min(length, width) / 2, sighted);
  return sighted;
}

/** The largest 3-4-5 that fits, and the handy ones below it; none in an arena too small for one. */
function trianglesFor(arena: Arena): RightTriangle[] {
  const { length, width } = isPosted(arena) ? arena.line : arena;
  const all = rightTriangles(length, width);
  return all.filter(({ multiple }) => [5, 10, 20].includes(multiple) || multiple === all.length);
}

/** The inputs that decide where stakes stand, and the holes, as they stand on the estimate; the bearing is told where the gate gave it. */
function usedInputs(
  job: Job,
  arena: Arena,
  work: PostWork | undefined,
  bearing: number | undefined,
  estimate: LayoutIssue["estimate"],
): UsedInput[] {
  const { now, input, around } = inputsOn(estimate);
  const places = fieldsOf(arena.structure).filter(
    ({ key, decides, section }) =>
      (decides && /^(pen|fence|gates)$/.test(section) && !key.endsWith("_by_other")) ||
      key === "north" ||
      key === "rail_under" ||
      (key === "length_bearing" && bearing === undefined),
  );
  const figures = work ? workFigures(job, work) : {};
  return [
    ...places.map(({ key }) => input(key, job[key] ?? "")),
    ...(bearing === undefined ? [] : [{ label: arenaLabels.bearing, value: bearing }]),
    ...around(job),
    ...Object.keys(figures)
      .filter((key) => key.includes("hole"))
      .map((key): UsedInput => ({ label: figureField(key).label, value: figures[key], ...now(key) })),
  ];
}
