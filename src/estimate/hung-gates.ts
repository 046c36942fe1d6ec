import { gateOpening, hingePlace, type HungGate } from "../fence/hung-gate";
import { slotKeys } from "./fields";
import { choiceOf, numbersOf, type Job } from "./job";
import { postSizes } from "./post-choices";

/** A gate of a job of posts: how it is hung, its clear opening, and where its leaves turn (`hingePlace`). Lengths in ft. */
export interface GateOnPosts extends HungGate {
  /** Its number in the list, from 1. */
  place: number;
  opening: number;
  hinge: { inset: number; off: number };
}

/** How many leaves a gate of a job has, by its number from 1. */
export const leavesOf = (job: Job, gate: number): 1 | 2 =>
  numbersOf(job, "gates_of_two").includes(gate) ? 2 : 1;

/**
 * The gates of a job in their order. The room beside a leaf is told for hinges and latch together, and of it what the
 * hinges take, else half (common practice, no source). Refuses as gateOpening does.
 */
export function hungGates(job: Job): GateOnPosts[] {
  const together = Number(job.gate_room ?? 0);
  const hingeRoom = job.hinge_room === null ? together / 2 : Math.min(Number(job.hinge_room), together);
  const onFace = numbersOf(job, "gates_on_face");
  return slotKeys("leaf").flatMap((key, k) => {
    if (job[key] === null) return [];
    const gate: HungGate = {
      leaf: job[key] as number,
      leaves: leavesOf(job, k + 1),
      hung: onFace.includes(k + 1) ? "on the face" : "between posts",
      hingeRoom,
      latchRoom: together - hingeRoom,
      lap: Number(job.gate_lap ?? 0),
    };
    const hinge = hingePlace(gate, postSizes[choiceOf(job, "gate_post")]);
    return [{ ...gate, place: k + 1, opening: gateOpening(gate), hinge }];
  });
}
