import { circleArea } from "../src/geometry/circle";
import { round, square } from "../src/geometry/section";
import { depthOf, fill } from "../src/ground/footing";
import { loads } from "../src/ground/hauling";
import { bags, holeConcrete } from "../src/ground/holes";
import { DRY_SAND_TONS, tons, truckYards } from "../src/ground/weight";
import { type Value } from "../src/units/cell";
import { allowed } from "../src/units/range";
import { notAllowed } from "../src/units/refusal";
import { numbers, option, optional, required, shaped } from "./arguments";
import { cellsOf, guarded, inShapeOf, type Call } from "./cells";
import { messages } from "./messages";
import { pricesOf } from "./prices";
import { quantities } from "./quantities";

type Term = Value | undefined;

/** How deep a layer is, and what is bought on top: depth, overrun, settle. */
const layer = (depth: Term, overrun: Term, settle: Term) =>
  [
    required(depth, quantities.depth),
    optional(overrun, quantities.overrun, 0),
    optional(settle, quantities.settle, 0),
  ] as const;

const tonsPerYard = (term: Term) => optional(term, quantities.tonsPerYard, DRY_SAND_TONS);

const sections = { round, square };
const postShapes = ["round", "square"] as const;

/** Footing, hauling and holes: volumes, depths, weights, loads, concrete. */
export const groundCalls: Record<string, Call> = {
  FOOTING: guarded((diameter, depth, overrun, settle) => {
    const [deep, over, sunk] = layer(depth, overrun, settle);
    return shaped(diameter, quantities.diameter, (across) => fill(circleArea(across), deep, over, sunk));
  }),
  FILL: guarded((area, depth, overrun, settle) => {
    const [deep, over, sunk] = layer(depth, overrun, settle);
    return shaped(area, quantities.area, (square) => fill(square, deep, over, sunk));
  }),
  DEPTH: guarded((yards, area) =>
    depthOf(required(yards, quantities.cubicYards), required(area, quantities.area)),
  ),
  TONS: guarded((yards, density) => {
    const each = tonsPerYard(density);
    return shaped(yards, quantities.cubicYards, (volume) => tons(volume, each), 0);
  }),
  LOADS: guarded((yards, trucks, short, prices) => {
    const need = required(yards, quantities.cubicYards);
    const sizes = numbers(trucks, quantities.trucks);
    const shortPercent = optional(short, quantities.short, 0);
    const each = pricesOf(prices, sizes, quantities.trucks.name);
    if (sizes.every((size) => size === 0))
      throw notAllowed(messages.about(quantities.trucks.name, messages.needed(allowed(quantities.trucks))));
    const offered = sizes.map((size, k) => ({ size, price: each?.[k] }));
    const counts = loads(need, offered, shortPercent);
    return inShapeOf(trucks, cellsOf(trucks).map((_, k) => (sizes[k] === 0 ? "" : counts[k]))); // prettier-ignore
  }),
  TRUCK_YARDS: guarded((body, payload, density) => {
    const [weight, each] = [required(payload, quantities.payload), tonsPerYard(density)];
    return shaped(body, quantities.body, (room) => truckYards(room, weight, each), 0);
  }),
  HOLE_CONCRETE: guarded((hole, depth, post, shape, gravel) => {
    const across = optional(post, quantities.post, 0);
    const section = sections[option(shape, "post_shape", postShapes)](across);
    return holeConcrete({
      diameter: required(hole, quantities.hole),
      depth: required(depth, quantities.depth),
      post: across > 0 ? section : undefined,
      gravel: optional(gravel, quantities.gravel, 0),
    });
  }),
  BAGS: guarded((volume, pounds, waste) =>
    bags(
      required(volume, quantities.cubicFeet),
      optional(pounds, quantities.bagPounds, 80),
      optional(waste, quantities.waste, 0),
    ),
  ),
};
