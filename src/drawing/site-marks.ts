import { strikes, type Findings, type SwungLeaf } from "../estimate/site-findings";
import { isRound, type RoundFence, type StraightFence } from "../fence/fence-line";
import { leafTip } from "../fence/leaf-swing";
import { type Stretch, type Wedge } from "../fence/wedges";
import { ahead, type Point as Place } from "../geometry/point";
import { type PlanColors, type Point } from "./frame";
import { label } from "./label";
import { shape, type Shape } from "./shape";

/** What is near a fence and what was found there, in ft about its center. */
export interface PlanSite {
  findings: Findings;
  neighbors: readonly (RoundFence | StraightFence)[];
}

/** Where a place on the ground is drawn, and how far from the center a drawing reaches, ft. */
export interface Ground {
  spot(place: Place): Point;
  reach: number;
}

/** Points along a curved line. */
const STEPS = 240;

/** How far from the center, ft, what was found reaches: leaf tips and the wide ends of wedges. */
export function siteReach({ findings: { leaves, wedges } }: PlanSite): number {
  const tips = leaves.map(({ leaf }) => leafTip(leaf, leaf.opens));
  const ends = wedges.flatMap(({ wedge: { first, second } }) => [
    first.from,
    first.to,
    second.from,
    second.to,
  ]);
  return Math.max(0, ...[...tips, ...ends].map(({ east, north }) => Math.hypot(east, north)));
}

/** Neighboring fences as long dashes, wedges hatched between the two fences, and the swing of every leaf from its hinge. */
export function siteMarks({ findings, neighbors }: PlanSite, ground: Ground, colors: PlanColors): Shape[] {
  return [
    ...neighbors.flatMap((fence, k) => fenceLine(fence, k + 1, ground, colors)),
    ...findings.wedges.flatMap(({ wedge }) => hatched(wedge, ground, colors.ink)),
    ...findings.leaves.map((swung) => swing(swung, ground, colors)),
  ];
}

const path = (points: readonly Point[]) =>
  points.map(({ x, y }, k) => `${k === 0 ? "M" : "L"}${x.toFixed(1)} ${y.toFixed(1)}`).join(" ");

/** A fence as far as the drawing reaches, with its number at the middle of its longest stretch there. */
function fenceLine(
  fence: RoundFence | StraightFence,
  neighbor: number,
  { spot, reach }: Ground,
  { ink, paper }: PlanColors,
): Shape[] {
  const runs: Place[][] = [[]];
  for (let k = 0; k <= STEPS; k++) {
    const place = placeAlong(fence, k / STEPS);
    if (Math.max(Math.abs(place.east), Math.abs(place.north)) <= reach) runs[runs.length - 1].push(place);
    else if (runs[runs.length - 1].length > 0) runs.push([]);
  }
  const drawn = runs.filter((run) => run.length > 1).map((run) => run.map(spot));
  const longest = [...drawn].sort((a, b) => b.length - a.length)[0];
  const line = { fill: "none", stroke: ink, "stroke-width": 2, "stroke-dasharray": "10 4" };
  return [
    ...drawn.map((run) => shape("path", { d: path(run), ...line, "data-neighbor": neighbor })),
    ...(longest
      ? [label(`#${neighbor}`, longest[Math.floor(longest.length / 2)], paper, { "font-size": 12.5 })]
      : []),
  ];
}

/** A place on a fence, its beginning at 0 and its end at 1. */
function placeAlong(fence: RoundFence | StraightFence, part: number): Place {
  if (isRound(fence)) return ahead(fence.center, 360 * part, fence.diameter / 2);
  const { from, to } = fence;
  return { east: from.east + (to.east - from.east) * part, north: from.north + (to.north - from.north) * part };
} // prettier-ignore

/** Lines across from one fence to the other, close together: read as a hatch in black and white too. */
function hatched({ first, second, across }: Wedge, { spot }: Ground, ink: string): Shape[] {
  const lines = 9;
  const between = ({ from, to }: Stretch, part: number) => placeAlong({ from, to }, part);
  const straight = Array.from({ length: lines + 1 }, (_, k) =>
    [first, second].map((stretch) => between(stretch, k / lines)),
  );
  return (across ?? straight).map((ends) => {
    const [a, b] = ends.map(spot);
    return shape("line", {
      x1: a.x,
      y1: a.y,
      x2: b.x,
      y2: b.y,
      stroke: ink,
      "stroke-width": 1,
      "data-wedge": 1,
    });
  });
}

/** The arc that a leaf's tip draws, the open leaf, and a dot at the hinge; heavy where it strikes something. */
function swing(swung: SwungLeaf, { spot }: Ground, { ink, faint }: PlanColors): Shape {
  const { leaf } = swung;
  const fouls = strikes(swung);
  const arc = Array.from({ length: 25 }, (_, k) => spot(leafTip(leaf, (leaf.opens * k) / 24)));
  const [hinge, open] = [spot(leaf.hinge), arc[arc.length - 1]];
  const line = { fill: "none", stroke: fouls ? ink : faint, "stroke-width": fouls ? 2.5 : 1 };
  return shape(
    "g",
    { "data-swing": fouls ? "fouls" : "free" },
    shape("path", { d: path(arc), ...line, "stroke-dasharray": "3 3" }),
    shape("path", { d: path([hinge, open]), ...line }),
    shape("circle", { cx: hinge.x, cy: hinge.y, r: 3.2, fill: ink }),
  );
}
