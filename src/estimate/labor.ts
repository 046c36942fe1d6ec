import { roundUp } from "../units/rounding";
import { type Job } from "./job";
import { ownCount, type TakeoffLine } from "./takeoff-line";

/** The field with the hours that one piece of a line takes, by the line's key without its slot; of a rail or kick board it is a foot's. */
const rates: Record<string, string> = {
  panel: "hours_panel",
  gate: "hours_gate",
  leaf: "hours_gate",
  line_posts: "hours_post",
  gate_posts: "hours_post",
  rails: "hours_rail",
  kick: "hours_rail",
};

/** That field of a line; undefined where its work is not counted in hours. */
export const rateOfLine = (key: string): string | undefined => rates[key.replace(/_\d+$/, "")];

/** Hours are counted in parts of so much. */
export const PART_OF_HOUR = 0.25;

/**
 * The hours of labor that the counts of a takeoff lead to by the job's production rates, up to the next quarter of an
 * hour: so much a panel, a gate, a post set, a foot of rail or kick board bought and a cubic yard of base or sand
 * spread. A blank rate is none.
 */
export function laborHours(job: Job, lines: readonly TakeoffLine[], yards: number): number {
  const rate = (key: string | undefined) => (key === undefined ? 0 : Number(job[key] ?? 0));
  const each = lines.map((line) => {
    const hours = rateOfLine(line.key);
    const feet = hours === "hours_rail" ? (line.size ?? 0) : 1;
    return ownCount(line) * feet * rate(hours);
  });
  const hours = each.reduce((sum, one) => sum + one, yards * rate("hours_yard"));
  return roundUp(hours / PART_OF_HOUR) * PART_OF_HOUR;
}
