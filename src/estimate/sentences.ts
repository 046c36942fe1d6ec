import { feetInches, inchesAlone } from "../units/feet-inches";
import { equal } from "../units/rounding";
import { listed } from "./listed";
import { messages } from "./messages";
import { type PanelPen } from "./panel-pen";
import { type ArenaOfPanels } from "./panel-arena";
import { type Pen } from "./pen";
import { type ArenaOfPosts } from "./post-arena";
import { type PostedPen } from "./post-pen";
import { liftsOf } from "../ground/lifts";
import { comes, type LaidLayer } from "./layers";

const inWords = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

/** A count as a builder says it: words below ten, figures from there. */
export const countInWords = (count: number) => inWords[count] ?? count.toLocaleString("en-US");

const plural = (count: number, one: string, many = `${one}s`) => (count === 1 ? one : many);

/** A size to be read aloud on the site: feet and inches in words, to the quarter inch. */
export const sizeInWords = (feet: number) => feetInches(feet, 4, "words");

/** The length of a piece, to the sixteenth of an inch. */
export const pieceInWords = (feet: number) => feetInches(feet, 16, "words");

const trimmed = (value: number, places: number) =>
  value.toLocaleString("en-US", { maximumFractionDigits: places });

/** Equal values together, in the order in which they first come: [value, how many]. */
function grouped(values: readonly number[]): [number, number][] {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts];
}

/** Gates of one leaf or of a frame, and gates of two leaves: "one 10 ft gate", "two gates of two 8 ft leaves". */
const gatesInWords = (gates: readonly number[], pairs: readonly number[]) => [
  ...grouped(gates).map(
    ([gate, count]) => `${countInWords(count)} ${pieceInWords(gate)} ${plural(count, "gate")}`,
  ),
  ...grouped(pairs).map(
    ([leaf, count]) => `${countInWords(count)} ${plural(count, "gate")} of two ${pieceInWords(leaf)} leaves`,
  ),
];

const withGates = (parts: string[], gates: readonly number[], pairs: readonly number[] = []) =>
  gates.length + pairs.length === 0
    ? `${listed(parts)}, no gate`
    : listed([...parts, ...gatesInWords(gates, pairs)]);

/** Panels and gates that close a pen: "18 panels of 12 ft and one 10 ft gate". */
export function piecesSentence({
  counts,
  lengths,
  gates,
}: Pick<PanelPen, "counts" | "lengths" | "gates">): string {
  const panels = counts.flatMap((count, k) =>
    count ? [`${countInWords(count)} ${plural(count, "panel")} of ${pieceInWords(lengths[k]!)}`] : [],
  );
  return withGates(panels, gates);
}

/** How large a panel pen is: "68 ft 3 in across the pins, 67 ft 2 3/4 in clear inside". */
export const panelSizesSentence = ({ pinCircle, insideClear }: PanelPen) =>
  `${sizeInWords(pinCircle)} across the pins, ${sizeInWords(insideClear)} clear inside`;

/**
 * What of the panels on hand a pen uses and leaves, those by other not among them: "Of the panels on hand: 18 of 12 ft
 * used, two left over"; "" where none are on hand.
 */
export function onHandSentence(
  { counts, lengths, onHand }: PanelPen,
  byOther: readonly number[] = [],
): string {
  const parts = onHand.flatMap((hand, k) => {
    if (hand === 0 || lengths[k] === null) return [];
    const used = Math.min(hand, (counts[k] ?? 0) - (byOther[k] ?? 0));
    const over = hand - used;
    const left = over === 0 ? "none left over" : `${countInWords(over)} left over`;
    return [`${used === 0 ? "none" : countInWords(used)} of ${pieceInWords(lengths[k]!)} used, ${left}`];
  });
  return parts.length === 0 ? "" : `Of the panels on hand: ${parts.join("; ")}`;
}

/** What passes a pen's gates: "Clear through the gate: 7 ft 8 in, under a bow of 9 ft"; "" where there is no gate. */
export function openingsSentence({ openings, bow }: PanelPen): string {
  if (openings.length === 0) return "";
  const sizes = listed(grouped(openings).map(([opening]) => pieceInWords(opening)));
  const under = bow === null ? "" : `, under a bow of ${pieceInWords(bow)}`;
  return `Clear through the ${plural(openings.length, "gate")}: ${sizes}${under}`;
}

/** Posts, bays and gates: "26 posts, bays of 7 ft 10 1/2 in and one 10 ft gate". */
export function postsSentence({ posts, bay, hung }: PostedPen | ArenaOfPosts, upTo = ""): string {
  const gates = (count: 1 | 2) => hung.filter(({ leaves }) => leaves === count).map(({ leaf }) => leaf);
  const bays = `bays of ${upTo}${pieceInWords(bay)}`;
  return `${countInWords(posts)} ${plural(posts, "post")}, ${withGates([bays], gates(1), gates(2))}`;
}

/** The length and width of an arena: "200 ft by 100 ft". */
export const byInWords = ({ length, width }: { length: number; width: number }) =>
  `${sizeInWords(length)} by ${sizeInWords(width)}`;

function panelArenaSentence(arena: ArenaOfPanels): string {
  const { panel, panels, gates, asked, length, width, layout } = arena;
  const { right, near } = layout.built;
  const others = [
    ...(equal(length, right.length) ? [] : [`right side ${sizeInWords(right.length)}`]),
    ...(equal(width, near.length) ? [] : [`near end ${sizeInWords(near.length)}`]),
  ];
  const built = [`${byInWords(arena)} built`, ...others].join(", ");
  return `${piecesSentence({ counts: [panels], lengths: [panel], gates })}: ${built}, ${byInWords(asked)} asked for`;
}

function postArenaSentence(arena: ArenaOfPosts): string {
  const { sizes, line } = arena;
  const corners =
    line.cornerRadius > 0 ? `corners of ${sizeInWords(line.cornerRadius)} radius` : "square corners";
  return `${postsSentence(arena, "up to ")}: ${byInWords(line)} through the posts, ${corners}, ${byInWords(sizes["inside clear"])} clear inside, ${byInWords(sizes.outside)} outside`;
}

/** What closes a pen or an arena and how large it then is. */
export function penSentence(pen: Pen): string {
  switch (pen.structure) {
    case "panel pen":
      return `${piecesSentence(pen)}: ${panelSizesSentence(pen)}, ${sizeInWords(pen.outside)} outside`;
    case "post pen":
      return `${postsSentence(pen)}: ${sizeInWords(pen.postCircle)} across the posts, ${sizeInWords(pen.insideClear)} clear inside, ${sizeInWords(pen.outside)} outside`;
    case "panel arena":
      return panelArenaSentence(pen);
    case "post arena":
      return postArenaSentence(pen);
  }
}

/** What one panel or post fewer and one more make of it; of an arena, on the long sides and on the ends or on the longest run. */
export function otherSizesSentence(pen: Pen): string {
  switch (pen.structure) {
    case "panel pen": {
      const { oneUnder, oneOver, lengths } = pen;
      const several = lengths.filter((length) => length !== null).length > 1;
      const panel = several && lengths[0] !== null ? `${pieceInWords(lengths[0])} panel` : "panel";
      const size = (feet: number | null) => (feet === null ? "closes nothing" : sizeInWords(feet));
      return `One ${panel} fewer: ${size(oneUnder)}; one more: ${size(oneOver)}`;
    }
    case "post pen": {
      const fewer = pen.oneFewer === null ? "makes no pen" : `bays of ${pieceInWords(pen.oneFewer)}`;
      return `One post fewer: ${fewer}; one more: bays of ${pieceInWords(pen.oneMore)}`;
    }
    case "panel arena": {
      const chord = pen.panel + pen.pinGap;
      const size = (feet: number) => (feet > chord / 2 ? sizeInWords(feet) : "nothing left");
      const beside = (built: number) => `${size(built - chord)} or ${sizeInWords(built + chord)}`;
      return `One panel fewer or more on both sides: ${beside(pen.length)} long; on both ends: ${beside(pen.width)} wide`;
    }
    case "post arena": {
      const { bays, length } = pen.longestRun;
      if (bays === 0) return "";
      const fewer = bays === 1 ? "none to leave out" : `bays of ${pieceInWords(length / (bays - 1))}`;
      return `On the longest run of ${countInWords(bays)} ${plural(bays, "bay")}, one post fewer: ${fewer}; one more: bays of ${pieceInWords(length / (bays + 1))}`;
    }
  }
}

/** The loads of sand, what they bring, how near that is to the need, and how deep it lies. */
export function sandSentence(sand: LaidLayer): string {
  const { depthLoose, depthSettled } = sand;
  if (!comes(sand)) return "No sand";
  const settled = equal(depthLoose, depthSettled) ? "" : `, ${depthInWords(depthSettled)} settled`;
  return `${broughtInWords(sand)}, ${depthInWords(depthLoose)} loose${settled}`;
}

/** What is said of the ground, layer by layer: of a base asked for so deep, in, with the lifts that it is compacted in. */
export function groundSentences(base: LaidLayer, sand: LaidLayer, asked: number): string[] {
  if (!comes(base)) return [sandSentence(sand)];
  const lifts = liftsOf(asked);
  const inLifts = lifts > 1 ? ` in ${countInWords(lifts)} lifts` : "";
  const of = (word: string, said: string) => `${word}, ${said[0].toLowerCase()}${said.slice(1)}`;
  return [
    of("Base", `${broughtInWords(base)}, ${depthInWords(base.depthSettled)} compacted${inLifts}`),
    comes(sand) ? of("Sand", sandSentence(sand)) : sandSentence(sand),
  ];
}

const depthInWords = (inches: number) => inchesAlone(inches, 8, "words");

function broughtInWords({ counts, trucks, delivered, overPercent }: LaidLayer): string {
  const loads = counts.flatMap((count, k) => (count ? [loadsInWords(count, trimmed(trucks[k]!, 2))] : []));
  const by = trucks.every((truck) => truck === null) ? "By the yard" : listed(loads) || "No load";
  return `${by}: ${trimmed(delivered, 1)} ${delivered === 1 ? "yard" : "yards"}, ${nearness(overPercent)}`;
}

/** "one 16", "two 10s", and from ten loads on "12 loads of 10", where two figures would meet. */
function loadsInWords(count: number, size: string): string {
  if (count >= inWords.length) return `${countInWords(count)} loads of ${size}`;
  return `${countInWords(count)} ${size}${count === 1 ? "" : "s"}`;
}

function nearness(overPercent: number | null): string {
  if (overPercent === null) return "none needed";
  const percent = trimmed(Math.abs(overPercent), 1);
  return percent === "0" ? "just what is needed" : `${percent} % ${overPercent > 0 ? "over" : "short"}`;
}

/** What to think over about the sand: too deep, by what was asked or by what comes, and too much of it. */
export function sandWarnings({ overPercent, depthLoose }: LaidLayer, depth: number): string[] {
  return [
    ...(Math.max(depth, depthLoose) > 6 ? [messages.deepFooting] : []),
    ...((overPercent ?? 0) > 10 ? [messages.tooMuchSand] : []),
  ];
}
