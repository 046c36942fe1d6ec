import { notAllowed, Refusal } from "../units/refusal";
import { feetInches } from "../units/feet-inches";
import { type Answers } from "./compare";
import { fieldOf } from "./fields";
import { readField, structureOf, type Job } from "./job";
import { messages } from "./messages";
import { arenas } from "./structures";

/** A size that is compared: what it is called, and the answers it is made with. */
export interface SizeAsked {
  label: string;
  answers: Answers;
}

/** How many sizes a comparison holds, least and most. */
export const comparedSizes = { least: 3, most: 8 } as const;

/** The fields that a size of a job is made of: how far across, or length and width. */
const sizeKeys = (job: Job) =>
  (arenas as readonly string[]).includes(structureOf(job)) ? ["arena_length", "arena_width"] : ["size"];

/**
 * Sizes as they are typed: `50, 60 ft, 20 m`, of an arena `100 x 200, 80 by 160`, separated by commas, semicolons or
 * lines. Refuses fewer than three, more than eight, one size twice, and a length that its field does not allow.
 */
export function readSizes(typed: string, job: Job): SizeAsked[] {
  const pieces = typed.split(/[,;\n]/).map((piece) => piece.trim()).filter((piece) => piece !== "");
  const { least, most } = comparedSizes;
  if (pieces.length < least || pieces.length > most) throw notAllowed(messages.compare.howMany(least, most));
  const sizes = pieces.map((piece) => sizeAsked(piece, sizeKeys(job)));
  const twice = sizes.find(({ label }, k) => sizes.findIndex((one) => one.label === label) !== k);
  if (twice) throw notAllowed(messages.compare.twice(twice.label));
  return sizes;
} // prettier-ignore

function sizeAsked(piece: string, keys: readonly string[]): SizeAsked {
  const sides = keys.length === 1 ? [piece] : piece.split(/\s*(?:x|×|\bby\b)\s*/i);
  if (sides.length !== keys.length) throw notAllowed(messages.compare.twoSides(piece));
  const values = keys.map((key, k) => reading(piece, () => readField(fieldOf(key), sides[k])));
  if (values.includes(null)) throw notAllowed(messages.compare.twoSides(piece));
  return {
    label: values.map((value) => feetInches(value as number, 16, "words")).join(" x "),
    answers: Object.fromEntries(keys.map((key, k) => [key, values[k]])),
  };
}

/** What work gives; what it refuses is said of the piece. */
function reading<T>(piece: string, work: () => T): T {
  try {
    return work();
  } catch (refusal) {
    if (refusal instanceof Refusal) throw new Refusal(refusal.kind, messages.compare.of(piece, refusal.message));
    throw refusal;
  }
} // prettier-ignore

/** Sizes to start from: the job's own, and two on either side of it that its fields allow. */
export function sizesOffered(job: Job): string {
  const keys = sizeKeys(job);
  const steps = [-20, -10, 0, 10, 20].map((step) => step / 100);
  const sizes = steps.map((share) =>
    keys.map((key) => {
      const [least, most] = fieldOf(key).range!;
      return Math.min(most, Math.max(least, Math.round(Number(job[key]) * (1 + share))));
    }),
  );
  return [...new Set(sizes.map((sides) => sides.join(" x ")))].join(", ");
}
