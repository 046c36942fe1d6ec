import { feetInches } from "../units/feet-inches";
import { type Language, type Question } from "./fields";
import { belongs, postFences, type Structure } from "./structures";

const amount = (value: number, unit: string) =>
  unit ? `${value.toLocaleString("en-US")} ${unit}` : value.toLocaleString("en-US");

const span = ({ range, unit }: Question) =>
  unit === "$"
    ? `$${amount(range![0], "")} to $${amount(range![1], "")}`
    : `${amount(range![0], "")} to ${amount(range![1], unit)}`;

/** What this room can say to a user. */
export const messages = {
  oneOf: (options: readonly string[]) => `Choose one of: ${options.join(", ")}.`,
  within: (field: Question) => `Allowed is ${span(field)}.`,
  whole: (field: Question) => `Write a whole number, ${span(field)}.`,
  many: ({ many, unit, range }: Question) =>
    unit
      ? `Write ${many!.join(" or ")} numbers with semicolons between, ft, such as ${Array.from({ length: many![0] }, (_, k) => [40, -12.5, 60][k]).join("; ")}.`
      : many![0] === 1
        ? `Write numbers from ${range![0]} to ${range![1]} with semicolons between, such as 1; 2.`
        : `Write pairs of stakes, ${many!.slice(0, -1).join(", ")} or ${many!.at(-1)} numbers with semicolons between, such as 3; 7.`,
  needed: "This is needed: the pen cannot be figured without it.",
  cornerRadiusOver: (most: number) =>
    `the corner radius is at most half the shorter side, ${feetInches(most, 16, "words")}`,
  spacingOverSide: (spacing: number, side: number) =>
    `posts ${feetInches(spacing, 16, "words")} apart are farther than the shorter side of ${feetInches(side, 16, "words")}: set them closer`,
  pricesMissing: (count: number) => `${count} ${count === 1 ? "price" : "prices"} missing`,
  noHeader: "No line was found that heads the columns: it must name at least item and price.",
  noItem: "It names no item.",
  unknownItem: "No item of the prices is called so. Call it as on the sheet of prices.",
  noSize: (unit: string) => `Its size cannot be read: write it in ${unit}, over 0 and at most 1000.`,
  noAmount: "Its price cannot be read: write an amount from 0 to 1,000,000, such as $1,234.50.",
  otherUnit: (unit: string, item: string) => `${item} is priced by this unit: ${unit}.`,
  noWaste: "Its waste cannot be read: write a percentage from 0 to 100.",
  noYesOrNo: "Whether it is taxed cannot be read: write yes or no.",
  noDate: "Its date cannot be read: write it such as 2026-04-09 or 4/9/2026.",
  tooLong: (most: number) => `A text of it is longer than ${most} characters.`,
  twice: (line: number) => `Line ${line} has this item, size and supplier already.`,
  priceMissing: "price?",
  examplePrice: "example price",
  tooMuchSand: "More than 10 % over what is needed",
  gatePostLight: "Gate posts are too light for the widest leaf: take wider ones",
  gatePostMarginal: "Gate posts are marginal for the widest leaf: see the gate maker's sheet",
  straightRails: "On the straights a length runs over as many bays as it reaches.",
  bowLow: "Bow under 9 ft: lead the horse through, do not ride",
  noTruck: "No gate lets in a truck 8 ft 6 in wide: haul in before the fence closes",
  depthByCode: "Local code and frost come first.",
  screeningDepth: "Post depth is a screening figure: a licensed engineer decides",
  depositCaution: "Some states cap the deposit that a contractor may ask for: look up yours first.",
  drawPercent: "A deposit or draw is 0 % to 100 % of the price.",
  depositTooMuch: "The deposit is an amount from $0 up to the price.",
  drawsTooMuch: "Deposit and draws come to more than the price: lower one of them.",
  noDraw: "Name at least one draw: the last one takes what is left of the price.",
  noJobs: "Choose at least one estimate.",
  answersDiffer: (labels: readonly string[]) =>
    `These estimates cannot be priced as one, since they differ in: ${labels.join("; ")}. Make them alike first.`,
  ownLoads:
    "Loads that you set yourself belong to one estimate: clear them before estimates are priced as one, so that their loads can be counted together.",
  deepFooting: "Loose sand over 6 in strains tendons",
  kickBoard: {
    en: (size: string, height: string) => `Kick board ${size} at the ground on the inside, ${height} high.`,
    es: (size: string, height: string) => `Tabla al pie ${size} en el suelo, por dentro, ${height} de alto.`,
  } satisfies Record<Language, (size: string, height: string) => string>,
  trapsHoof: {
    en: (openings: string) =>
      `Open by ${openings}: from 3 in to 8 in a hoof, a leg or a head can be caught. Close it to 3 in or open it to 8 in.`,
    es: (openings: string) =>
      `Abierto ${openings}: entre 3" y 8" se puede atorar un casco, una pata o la cabeza. Ciérrelo a 3" o ábralo a 8".`,
  } satisfies Record<Language, (openings: string) => string>,
  railHeights: {
    en: (middles: string[], between: string) =>
      middles.length === 1
        ? `The rail's middle is ${middles[0]} above the ground.`
        : `Middles of the rails above the ground: ${middles.join(", ")}; ${between} open between them.`,
    es: (middles: string[], between: string) =>
      middles.length === 1
        ? `El centro del travesaño va a ${middles[0]} del suelo.`
        : `Centros de los travesaños sobre el suelo: ${middles.join(", ")}; ${between} libres entre ellos.`,
  } satisfies Record<Language, (middles: string[], between: string) => string>,
  compare: {
    howMany: (least: number, most: number) => `Write ${least} to ${most} sizes, separated by commas.`,
    twice: (size: string) => `${size} is there twice.`,
    twoSides: (piece: string) => `${piece}: write length by width, such as 200 x 100.`,
    of: (piece: string, why: string) => `${piece}: ${why}`,
  },
  ways: {
    base: (inches: number) => (inches > 0 ? `${inches} in of base` : "no base"),
    footing: (inches: number) => `${inches} in of footing`,
    fence: (structure: Structure) => `a ${structure}`,
    gate: (feet: number) => `a gate of ${feet} ft`,
    rails: (rows: number) => `${rows} rows of rails`,
    byOwner: "the owner doing the work",
  },
};

const movingPanels =
  "Sand and panels: look up for wires before a truck raises its bed, keep people clear of a backing truck, and lift panels with two. No loose sand over 6 in: it strains tendons.";
const movingPosts =
  "Look up for wires before a truck raises its bed, keep people clear of a backing truck and of the auger, and lift posts with two. Gloves and glasses for treated wood and wet cement. No loose sand over 6 in: it strains tendons.";

/** The usual cautions at the foot of an estimate. Local codes and licensed practice come first. */
export const cautionsOf = (structure: Structure) => [
  "Before digging or driving stakes: mark the work in white, have public lines located (811 in the US), and have the owner mark private lines. Hand-dig near a marked line.",
  belongs({ structures: postFences }, structure) ? movingPosts : movingPanels,
  "Close openings that could trap a hoof, a leg or a head, and wedges between fences that are too narrow for a horse to turn in.",
  "Depth and bracing of posts follow local code and frost; grading and drainage follow the local permit. Figures are for planning: where a structure matters, a licensed engineer decides.",
];
