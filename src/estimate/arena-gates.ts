import { type ArenaGate } from "../fence/arena-gates";
import { type Side } from "../geometry/rounded-outline";
import { slotKeys } from "./fields";
import { choiceOf, type Job } from "./job";

/** The side of an arena that a job's word names. */
export const sideOf = (word: string) => word.split(" ")[0] as Side;

/** The gates of an arena, each with the side it is on and its place there, and so much more than the list says, ft. */
export const arenaGates = (job: Job, list: "gate" | "leaf", more = 0): ArenaGate[] =>
  slotKeys(list).flatMap((key, k) => {
    const size = job[key] as number | null;
    if (size === null) return [];
    const at = job[`gate_at_${k + 1}`] as number | null;
    const side = sideOf(choiceOf(job, `gate_side_${k + 1}`));
    return [{ side, opening: size + more, ...(at === null ? {} : { at }) }];
  });
