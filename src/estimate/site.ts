import { type RoundFence, type StraightFence } from "../fence/fence-line";
import { layOutFromGate, type GatePlace } from "../fence/gate-first";
import { type Stake } from "../fence/layout";
import { type Point } from "../geometry/point";
import { type Hand, type Swing } from "./fields";
import { answerOf, choiceOf, numbersOf, type Job } from "./job";
import { outerFence } from "./outer-fence";
import { isArena, type Pen } from "./pen";
import { piecesOnGround } from "./pieces-on-ground";
import { findingsOf, type Findings } from "./site-findings";

const place = ([east, north]: number[]) => ({ east, north });

/** The fences near a job's own, ft from its center: three numbers are a round one's center and size across, four the ends of a straight one. */
export const neighborsOf = (job: Job): (RoundFence | StraightFence)[] =>
  ["neighbor_1", "neighbor_2"].flatMap<RoundFence | StraightFence>((key) => {
    const numbers = numbersOf(job, key);
    if (numbers.length === 0) return [];
    return numbers.length === 3
      ? [{ center: place(numbers), diameter: numbers[2] }]
      : [{ from: place(numbers), to: place(numbers.slice(2)) }];
  });

/** Where the first gate's posts or pins are to stand, ft from the crew's mark; nothing where one is not told. */
export function gatePlaceOf(job: Job): GatePlace | undefined {
  const [right, left] = [numbersOf(job, "gate_right"), numbersOf(job, "gate_left")];
  if (right.length === 0 || left.length === 0) return undefined;
  return { from: place(right), to: place(left), pen: "right" };
}

/** A layout at the bearing that a job asks for or, where its first gate's posts are placed, at that which they give. */
export interface Placed<S extends Stake> {
  stakes: S[];
  bearing: number;
  /** Where the gate came first: the center from the crew's mark, ft. */
  center?: Point;
  /** And how much farther apart the places of its posts are than the gate is wide, ft. */
  over?: number;
}

/** The field with the bearing that a pen is laid out with: of the first gate's middle, of an arena of its left side. */
export const bearingKey = (pen: Pen) => (isArena(pen) ? "length_bearing" : "gate_bearing");

/** The stakes of a job's pen by its layout for a bearing, degrees. Refuses as layOutFromGate and the layout do. */
export function placed<S extends Stake>(job: Job, pen: Pen, layout: (bearing: number) => S[]): Placed<S> {
  const place = gatePlaceOf(job);
  const asked = Number(job[bearingKey(pen)] ?? 0);
  if (!place) return { stakes: layout(asked), bearing: asked };
  const { bearing, center, over } = layOutFromGate(layout, place);
  return { stakes: layout(bearing), bearing, center, over };
}

/** What is wrong between a job's fence, laid out with a bearing as piecesOnGround takes it, its gates and what is near. */
export const siteFindings = (job: Job, pen: Pen, bearing: number): Findings =>
  findingsOf({
    pieces: piecesOnGround(pen, bearing),
    outer: outerFence(pen, bearing),
    neighbors: neighborsOf(job),
    turningRoom: answerOf(job, "turning_room"),
    hand: choiceOf(job, "gate_hand") as Hand,
    swing: choiceOf(job, "gate_swing") as Swing,
  });
