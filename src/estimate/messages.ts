import { type Field } from "./fields";

const amount = (value: number, unit: string) =>
  unit ? `${value.toLocaleString("en-US")} ${unit}` : value.toLocaleString("en-US");

const span = ({ range, unit }: Field) =>
  unit === "$"
    ? `$${amount(range![0], "")} to $${amount(range![1], "")}`
    : `${amount(range![0], "")} to ${amount(range![1], unit)}`;

/** What this room can say to a user. */
export const messages = {
  oneOf: (options: readonly string[]) => `Choose one of: ${options.join(", ")}.`,
  within: (field: Field) => `Allowed is ${span(field)}.`,
  whole: (field: Field) => `Write a whole number, ${span(field)}.`,
  needed: "This is needed: the pen cannot be figured without it.",
  pricesMissing: (count: number) => `${count} ${count === 1 ? "price" : "prices"} missing`,
  priceMissing: "price?",
  examplePrice: "example price",
  tooMuchSand: "More than 10 % over what is needed",
  deepFooting: "Loose sand over 6 in strains tendons",
};

/** The usual cautions at the foot of an estimate. Local codes and licensed practice come first. */
export const cautions = [
  "Before digging or driving stakes: mark the work in white, have public lines located (811 in the US), and have the owner mark private lines. Hand-dig near a marked line.",
  "Sand and panels: look up for wires before a truck raises its bed, keep people clear of a backing truck, and lift panels with two. No loose sand over 6 in: it strains tendons.",
  "Close openings that could trap a hoof, a leg or a head, and wedges between fences that are too narrow for a horse to turn in.",
  "Depth and bracing of posts follow local code and frost; grading and drainage follow the local permit. Figures are for planning: where a structure matters, a licensed engineer decides.",
];
