import { type ArenaGate } from "../fence/arena-gates";
import { type Side } from "../geometry/rounded-outline";
import { slotKeys } from "./fields";
import { choiceOf, lengthsIn, type Job } from "./job";

/** The side of an arena that a job's word names. */
export const sideOf = (word: string) => word.split(" ")[0] as Side;

/** The gates of an arena, each with the side it is on and its place there; their openings, ft, are those of the list unless told. */
export const arenaGates = (job: Job, list: "gate" | "leaf", openings = lengthsIn(job, list)): ArenaGate[] =>
  slotKeys(list)
    .flatMap((key, k) => (job[key] === null ? [] : [k + 1]))
    .map((place, i) => {
      const at = job[`gate_at_${place}`] as number | null;
      const side = sideOf(choiceOf(job, `gate_side_${place}`));
      return { side, opening: openings[i], ...(at === null ? {} : { at }) };
    });
