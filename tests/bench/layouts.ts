import { repriced } from "../../src/estimate/compare";
import { estimate } from "../../src/estimate/estimate";
import { newJob } from "../../src/estimate/job";
import { examplePrices } from "../../src/estimate/prices";
import { postLayout } from "../../src/fence/post-layout";
import { postCount } from "../../src/fence/posts";
import { nanoseconds, type Row } from "./measure";

const POSTS = 60;

/** Pens of 60 posts each, from 100 to 200 ft, with a gate. */
const pens = Array.from({ length: 1000 }, (_, k) => {
  const diameter = 100 + k / 10;
  return { diameter, spacing: diameter * Math.sin(Math.PI / POSTS) * 1.005, gates: [8], gatePost: 0.5 };
});

/** The same stakes by the textbook: equal angles beside the gate's, and from each stake the ties by its coordinates. */
function plainly({ diameter, gates, gatePost }: (typeof pens)[number]) {
  const gate = 2 * Math.asin((gates[0] + gatePost) / diameter);
  const bay = (2 * Math.PI - gate) / (POSTS - 1);
  const places = Array.from({ length: POSTS }, (_, k) => {
    const angle = k === 0 ? -gate / 2 : gate / 2 + (k - 1) * bay;
    return { angle, east: (diameter / 2) * Math.sin(angle), north: (diameter / 2) * Math.cos(angle) };
  });
  const apart = (a: { east: number; north: number }, b: { east: number; north: number }) =>
    Math.hypot(a.east - b.east, a.north - b.north);
  return places.map((place, k) => ({
    stake: k + 1,
    ...place,
    bearing: ((place.angle * 180) / Math.PI + 360) % 360,
    chord: apart(place, places[(k + POSTS - 1) % POSTS]),
    tie1: apart(place, places[0]),
    tie2: apart(place, places[1]),
  }));
}

/** What many layouts and many sizes take. */
export function layoutRows(): Row[] {
  const odd = pens.find((pen) => postCount(pen) !== POSTS);
  if (odd) throw new Error(`a pen of ${odd.diameter} ft has ${postCount(odd)} posts, not ${POSTS}`);
  const job = newJob();
  const sizes = Array.from({ length: 200 }, (_, k) => 40 + k / 2);
  return [
    {
      what: `1000 layouts of ${POSTS} posts`,
      figure: nanoseconds(() => pens.map((pen) => postLayout(pen, 0))) / 1e6,
      unit: "ms",
      peer: "plain trigonometry",
      peerFigure: nanoseconds(() => pens.map(plainly)) / 1e6,
    },
    {
      what: "a compare of 200 sizes",
      figure: nanoseconds(() => sizes.map((size) => repriced(job, { size }, examplePrices))) / 1e6,
      unit: "ms",
      peer: "200 bare estimates",
      peerFigure: nanoseconds(() => sizes.map((size) => estimate({ ...job, size }, examplePrices))) / 1e6,
    },
  ];
}
