import { type Point, bearingTo, distance } from "../geometry/point";
import { noAnswer } from "../units/refusal";
import { type Stake } from "./layout";
import { messages } from "./messages";

/** Where a stake is driven, ft from the center at 0, 0, and whether a gate ends there. */
export interface StakePlace extends Point {
  atGate: boolean;
}

const ORIGIN: Point = { east: 0, north: 0 };

/** The stakes at these places in order, with the chords, ties and bearings that set them. There are two or more. */
export function stakesAt(places: readonly StakePlace[]): Stake[] {
  return places.map(({ east, north, atGate }, i) => {
    const place = { east, north };
    return {
      stake: i + 1,
      atGate,
      chord: distance(places.at(i - 1) as Point, place),
      tie1: distance(places[0], place),
      tie2: distance(places[1], place),
      bearing: bearingTo(ORIGIN, place),
      east,
      north,
    };
  });
}

/** More stakes than any fence has; a spacing of an inch would ask for as many. */
const MOST_STAKES = 10_000;

/** The same count where a fence may have it. Refuses (no answer) over 10 000 and what is no number. */
export function stakeCount(count: number): number {
  if (!(count <= MOST_STAKES)) throw noAnswer(messages.tooManyStakes(MOST_STAKES));
  return count;
}
