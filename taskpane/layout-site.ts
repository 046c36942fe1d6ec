import { answerOf, type Job } from "../src/estimate/job";
import { isArena, type Pen } from "../src/estimate/pen";
import { placed, siteFindings } from "../src/estimate/site";
import { byOtherSentences, offGateSentence, siteSentences } from "../src/estimate/site-sentences";
import { stakesOnGround } from "../src/estimate/stakes-on-ground";
import { type Point } from "../src/geometry/point";
import { feetInches } from "../src/units/feet-inches";
import { degrees } from "../src/units/number-text";
import { Refusal } from "../src/units/refusal";

/** What a job's site comes to, in sentences: where its gate sets the center, what was found, and why neither can be told. */
export interface Site {
  gate: string;
  /** What of the fence is by other. */
  byOther: string[];
  notes: string[];
  refusal: string;
}

const say = {
  gateFirst: (east: string, north: string, arena: boolean, bearing: string) =>
    `The gate sets the center stake ${east} and ${north} of your mark, the ${arena ? "left side" : "gate's middle"} at ${bearing}.`,
  east: (feet: number) => `${feetInches(Math.abs(feet))} ${feet < 0 ? "west" : "east"}`,
  north: (feet: number) => `${feetInches(Math.abs(feet))} ${feet < 0 ? "south" : "north"}`,
  capital: (sentence: string) => `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`,
};

/** The site of a job as the panel tells it; of no pen nothing. */
export function siteOf(job: Job, pen?: Pen): Site {
  if (!pen) return { gate: "", byOther: [], notes: [], refusal: "" };
  try {
    const { bearing, center, over } = placed(job, pen, (asked) => stakesOnGround(pen, asked));
    const found = siteFindings(job, pen, bearing);
    const set = (at: Point) =>
      say.gateFirst(say.east(at.east), say.north(at.north), isArena(pen), degrees(bearing));
    return {
      gate: center ? `${set(center)} ${offGateSentence(over!)}` : "",
      byOther: byOtherSentences(job, pen),
      notes: siteSentences(found, answerOf(job, "turning_room")),
      refusal: "",
    };
  } catch (refusal) {
    if (refusal instanceof Refusal)
      return { gate: "", byOther: [], notes: [], refusal: say.capital(refusal.message) };
    throw refusal;
  }
}
