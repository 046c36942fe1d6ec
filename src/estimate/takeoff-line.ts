import { slotKeys, type SlotList } from "./fields";
import { numbersOf, type Job } from "./job";
import { type LineSection } from "./own-lines";
import { priceKinds, type PricedItem, type PriceKind } from "./prices";

/** One line of the takeoff: what, and how much of it is counted, before waste. Null counts are unused slots. */
export interface TakeoffLine extends PricedItem {
  key: string;
  section: LineSection;
  counted: number | null;
  /** How many more of it another layer takes: a truck's loads of base beside those of sand. */
  also?: number;
  /** How many of those counted another estimate brings. */
  byOther?: number;
  /** How many of the others the user has already. */
  onHand?: number;
  /** Bought in whole pieces, so that waste is rounded up. */
  whole: boolean;
}

/** Units of which a part can be bought; everything else comes in whole pieces. */
const inParts = ["ton", "cu yd", "hour", "day"];

/** Whether an item is bought in whole pieces. */
export const isWhole = (item: PriceKind) => !inParts.includes(priceKinds[item].unit);

/** A line of the takeoff. */
export const takeoffLine = (
  key: string,
  section: LineSection,
  item: PriceKind,
  size: number | null,
  counted: number | null,
): TakeoffLine => ({ key, section, item, size, counted, whole: isWhole(item) });

/** How much of a line this estimate brings: what is counted, less what another one brings. */
export const ownCount = ({ counted, byOther = 0 }: TakeoffLine) => Math.max(0, (counted ?? 0) - byOther);

/** How much of a line is to be bought, before waste: what is on hand is used first. */
export const toBuy = (line: TakeoffLine) =>
  Math.max(0, ownCount(line) + (line.also ?? 0) - (line.onHand ?? 0));

/** What of the pieces on hand is left over; null where none are on hand. */
export const leftOver = (line: TakeoffLine) =>
  line.onHand ? Math.max(0, line.onHand - ownCount(line)) : null;

/** The count of a line, or the user's own in its place. */
export const orOwn = (job: Job, key: string, count: number) => (job[`${key}_use`] as number | null) ?? count;

/** Whether a gate, counted from 1, belongs to another estimate, which brings it and its posts. */
export const isByOther = (job: Job, gate: number) => numbersOf(job, "gates_by_other").includes(gate);

/** One line for every gate of a list, each by its size, so many to a gate; of one by other none is counted. */
export const slotLines = (
  job: Job,
  list: SlotList,
  item: PriceKind,
  each: (gate: number) => number = () => 1,
): TakeoffLine[] =>
  slotKeys(list).map((key, k) => {
    const size = job[key] as number | null;
    const counted = size === null ? null : isByOther(job, k + 1) ? 0 : each(k + 1);
    return takeoffLine(key, "gates", item, size, counted);
  });
