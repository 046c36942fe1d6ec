import { INCHES_PER_FOOT } from "../units/conversion";
import { feetInches } from "../units/feet-inches";

const beside = (panels: number) => (panels === 0 ? "without a panel" : `with ${panels} of these panels`);

const inInches = (inches: number) => feetInches(inches / INCHES_PER_FOOT, 16, "words");

const leafOf = (leaf: number, pounds: number) =>
  `a leaf of ${feetInches(leaf, 16, "words")} and ${Math.round(pounds)} lb`;

/** What this room can say to a user. Lengths come in feet. */
export const messages = {
  pinGapTooShort: "pin_gap_in: a gap this far below 0 leaves nothing of a panel or gate",
  gatesAloneNeed: (size: number, panels: number) =>
    `gates alone need ${feetInches(size)} across the pins: that is the smallest pen that closes, ${beside(panels)}`,
  panelsNeed: (size: number, panels: number) =>
    `${panels} of these panels need ${feetInches(size)} across the pins: that is the smallest pen that closes`,
  smallestPen: (size: number, gates: boolean) =>
    `${gates ? "gates alone" : "these panels"} need ${feetInches(size)} across the pins: that is the smallest pen that closes`,
  largestPen: (size: number) => `the largest pen that these panels close is ${feetInches(size)}`,
  nothingWithin: (diameter: number, tolerance: number, nearest: number) =>
    `no mix comes within ${feetInches(tolerance)} of ${feetInches(diameter)}: the nearest is ${feetInches(nearest)}`,
  nothingCloses:
    "these panels and gates close no pen around its center: it takes three or more, none too long for the rest",
  tooManyMixes: "too many mixes to try: give fewer lengths, fewer gates or a smaller pen",
  spacingTooLong: (diameter: number) => `the spacing must be at most the diameter, ${feetInches(diameter)}`,
  gateTooLong: (diameter: number) =>
    `a gate with its posts must be no longer than the diameter, ${feetInches(diameter)}`,
  gatesFillCircle: (diameter: number) =>
    `the gates are as long as the whole circle of ${feetInches(diameter)} or longer: nothing is left for the fence`,
  moreGatesThanBays: (gates: number, bays: number) =>
    `${gates} gates need a bay between each two, but there is room for ${bays} only: use a shorter spacing or fewer gates`,
  tooManyStakes: (most: number) => `over ${most} stakes: check the lengths`,
  nominalUnreadable: (text: string) =>
    `cannot read "${text}": write a nominal size such as 2x6, 4x4 or 5/4x6`,
  nominalRange: (most: number) =>
    `a nominal size is thickness by width in inches, the smaller first, from 1x2 to ${most}x${most}: 2x6`,
  railsTooMany: (rows: number, width: number, under: number, height: number) =>
    `${rows} rows of ${width} in, the lowest ${under} in up, do not fit under ${height} in: fewer rows, less open, or higher posts`,
  gateOnArc: (side: string) => `the ${side} side is all arc: a gate needs a straight side`,
  gateOverSide: (side: string, chord: number, straight: number) =>
    `gates on the ${side} side: one is ${feetInches(chord)} with its posts, and the straight is ${feetInches(straight)}`,
  gatePastEnd: (side: string, least: number, most: number) =>
    `a gate on the ${side} side must begin from ${feetInches(least)} to ${feetInches(most)} from the corner`,
  gatesOverlap: (side: string) => `two gates on the ${side} side overlap: set them farther apart`,
  gatesOverPanels: (side: string, gates: number, asked: number) =>
    `the gates on the ${side} side are ${feetInches(gates)} together, longer than the side of ${feetInches(asked)}`,
  sidePushNeeded:
    "the building code's rule needs the side push in pounds, its height, the width of post or concrete, and the soil's bearing",
  screeningDepth:
    "A screening figure by the building code's formula: for a first look only. A licensed engineer decides where anything depends on it.",
  noPostLength: (length: number, longest: number) =>
    `the post must be at least ${feetInches(length, 16, "words")} long and the longest is ${feetInches(longest, 16, "words")}: list a longer one`,
  nothingInside: "the posts and boards are as wide as the pen: nothing is left inside",
  nothingOfGate: "the room for hinges, latch and laps leaves nothing of the gate: check the inches",
  gatePost: {
    "too light": (post: number, leaf: number, pounds: number, least: number) =>
      `A ${inInches(post)} post is too light for ${leafOf(leaf, pounds)}: use at least ${inInches(least)}.`,
    marginal: (post: number, leaf: number, pounds: number, least: number) =>
      `A ${inInches(post)} post is marginal for ${leafOf(leaf, pounds)}: it may lean in time; ${inInches(least)} serves.`,
    serves: (post: number, leaf: number, pounds: number) =>
      `A ${inInches(post)} post serves ${leafOf(leaf, pounds)}.`,
    "more than needed": (post: number, leaf: number, pounds: number, least: number) =>
      `A ${inInches(post)} post is more than ${leafOf(leaf, pounds)} needs: ${inInches(least)} serves.`,
  },
  gatePostCaution:
    "By common practice, for screening only: the gate maker's sheet governs, and a licensed engineer decides for heavy or wide gates.",
  noSuchStake: (stake: number, stakes: number) =>
    `fence by other: there is no stake ${stake}, the fence has stakes 1 to ${stakes}`,
  runOfNothing: (stake: number) =>
    `fence by other: a run goes from one stake clockwise to another, not from ${stake} to ${stake}`,
  runPassesGate: (from: number, to: number, gate: number) =>
    `fence by other: the run from stake ${from} to stake ${to} passes gate ${gate}, which is yours: end the run at its posts, or name the gate among those by other`,
  runsOverlap: (stake: number) =>
    `fence by other: two runs hold the fence that begins at stake ${stake}: name it once`,
  stockTooShort: (stock: number, piece: number) =>
    `stock of ${feetInches(stock, 16, "words")} does not reach over a bay of ${feetInches(piece, 16, "words")}: take longer stock or closer posts`,
  tooManyBays: (most: number) => `over ${most} bays of boards: check the spacing`,
  nothingOfBay: "boards that stop so short of the posts leave nothing of a bay: check the reach",
  noStock: "list at least one length of stock",
  bend: (bends: boolean, radius: number, ratio: number, thickness: number, least: number) =>
    `${bends ? "Pieces follow the curve over several bays" : "One bay a piece"}: a radius of ${feetInches(radius, 16, "words")} is ${Math.floor(ratio)} times the ${inInches(thickness)} of the stock, and it is taken to bend by hand from ${least} times on.`,
  rowsOverlap: (top: number, below: number) =>
    `rows: the one at ${inInches(top)} overlaps what is below it, up to ${inInches(below)}: set it higher`,
};
