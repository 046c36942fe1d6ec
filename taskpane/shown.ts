import {
  fields,
  holdsGateNumbers,
  slotKeys,
  slots,
  type FieldValue,
  type Question,
  type SlotList,
} from "../src/estimate/fields";
import { figureFields } from "../src/estimate/figure-list";
import { type Figure } from "../src/estimate/figures";
import { type Job } from "../src/estimate/job";
import { type Cell, isError } from "../src/units/cell";
import { feetInches } from "../src/units/feet-inches";
import { numbersAsCell } from "../src/units/number-list";

const dollars = new Intl.NumberFormat("en-US", { style: "currency", currency: "USD" });

/** Money as the panel shows it. */
export const money = (value: number) => dollars.format(value);

/** Money without its cents, to the dollar. */
export const wholeDollars = (value: number) => dollars.format(Math.round(value)).replace(/\.00$/, "");

/** A number as the panel shows it: up to so many decimals, none that are 0. */
export const number = (value: number, places = 2) =>
  value.toLocaleString("en-US", { maximumFractionDigits: places });

/** What a field's input holds: a text as typed, or a number to 1/10 000 of its unit. */
export const inField = (value: FieldValue | undefined) =>
  typeof value === "number" ? String(Math.round(value * 10_000) / 10_000) : (value ?? "");

/** A length read back in feet and inches; nothing for other fields and blanks. */
export function readBack({ kind, unit }: Question, value: FieldValue | undefined): string {
  if (kind !== "length" || typeof value !== "number") return "";
  return feetInches(unit === "in" ? value / 12 : value);
}

/** What a cell shows, to the cent where it is a number. */
export function cellText(value: Cell | Figure): string {
  if (isError(value)) return value.error;
  return typeof value === "number" ? number(value) : String(value ?? "") || "nothing";
}

/** A sentence whose sizes stay in one piece where a line breaks. */
export const unbroken = (sentence: string) => sentence.replace(/(\d) (?=\d+\/\d|ft\b|in\b|%)/g, "$1\u00a0");

/** The labels of the fields of these keys, in the order of the list. */
export const labelsOf = (keys: readonly string[]) =>
  fields
    .filter(({ key }) => keys.includes(key))
    .map(({ label }) => label.en)
    .join(", ");

const partNames: Record<string, string> = {
  count: "counted",
  quantity: "quantity",
  price: "unit price",
  amount: "amount",
  taxed: "tax",
  left: "left over",
};

/** A sentence that begins with a capital. */
export const capitalized = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** What a keyed cell of an estimate is called. */
export function keyLabel(key: string): string {
  const figure = figureFields.find((one) => one.key === key);
  if (figure) return figure.label.en;
  const [, line, part] = /^(.*)_([a-z]+)$/.exec(key) ?? [];
  if (line === "sum") return `Sum of ${part}`;
  const field = fields.find((one) => one.key === line || one.insteadOf === key);
  const name = field?.label.en.replace(/: use instead$/, "") ?? capitalized(line.replaceAll("_", " "));
  return part in partNames ? `${name}, ${partNames[part]}` : capitalized(key.replaceAll("_", " "));
}

/** How many places of a list are in use: up to the last one filled; of panels and trucks at least one. */
export function placesInUse(answers: Job, list: SlotList): number {
  const filled = slotKeys(list).map((key) => (answers[key] ?? "") !== "");
  return Math.max(filled.lastIndexOf(true) + 1, list === "gate" || list === "leaf" ? 0 : 1);
}

/** The answers that take a place out of a list: those behind it move up, with the counts set in their place. */
export function without(answers: Job, list: SlotList, place: number): Job {
  const changes: Job = {};
  const ofGates = list === "gate" || list === "leaf" ? ["gate_side_N", "gate_at_N"] : [];
  for (let to = place; to <= slots[list]; to++)
    for (const pattern of [`${list}_N`, `${list}_N_use`, `${list}_N_stock`, ...ofGates]) {
      const key = pattern.replace("N", String(to));
      if (key in answers) changes[key] = answers[pattern.replace("N", String(to + 1))] ?? null;
    }
  if (ofGates.length > 0)
    for (const { key } of fields.filter(holdsGateNumbers)) changes[key] = numbersWithout(answers[key], place);
  return changes;
}

/** Numbers of gates as they were written, without one, those above it one less; what cannot be read stays. */
function numbersWithout(written: FieldValue | undefined, gate: number): FieldValue {
  const numbers = String(written ?? "")
    .split(/;|,\s/)
    .map(Number);
  if (!numbers.every((one) => one > 0)) return written ?? null;
  const left = numbers.filter((one) => one !== gate).map((one) => (one > gate ? one - 1 : one));
  return left.length > 0 ? numbersAsCell(left) : null;
}
