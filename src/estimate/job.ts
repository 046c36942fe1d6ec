import { notAllowed, Refusal } from "../units/refusal";
import { numbersAsCell, readNumbers } from "../units/number-list";
import { readNumber } from "../units/number-text";
import { lengthRange, readQuantity } from "../units/range";
import {
  fieldOf,
  fields,
  slotKeys,
  type Field,
  type FieldValue,
  type Question,
  type SlotList,
} from "./fields";
import { messages } from "./messages";
import { belongs, structures, type Structure } from "./structures";

/** A job's answers by the key of their field; every field has one, null where it is blank. */
export type Job = Record<string, FieldValue>;

/** A new job: every field at its default. */
export const newJob = (): Job => Object.fromEntries(fields.map((field) => [field.key, field.default]));

/** The number that answers a field, or its default where it is left blank. */
export const answerOf = (job: Job, key: string) => Number(job[key] || fieldOf(key).default);

/** The word that answers a choice, or its default where it is left blank. */
export const choiceOf = (job: Job, key: string) => String(job[key] ?? fieldOf(key).default);

/** What a job builds; a panel pen where that cannot be read. */
export const structureOf = (job: Job): Structure =>
  structures.find((one) => one === job.structure) ?? structures[0];

/** The lengths that a list of slots holds, blanks passed over. */
export const lengthsIn = (job: Job, list: SlotList) =>
  slotKeys(list).flatMap((key) => (job[key] === null ? [] : [job[key] as number]));

/**
 * What a person typed, or a cell holds, as a field's value: lengths in any notation become numbers in the field's
 * unit, an empty text becomes a blank. Refuses what the field does not allow, in a sentence that says what it does.
 */
export function readField(field: Question, raw: unknown): FieldValue {
  if (raw === null || raw === undefined) return null;
  const typed = typeof raw === "number" ? raw : String(raw).trim();
  if (typed === "") return null;
  switch (field.kind) {
    case "text":
      return String(typed);
    case "choice": {
      const found = field.options!.find((option) => option.toLowerCase() === String(typed).toLowerCase());
      if (found === undefined) throw notAllowed(messages.oneOf(field.options!));
      return found;
    }
    case "numbers":
      return numbersAsCell(severalIn(field, typed));
    case "length":
      return inRange(field, readQuantity(typed, { ...lengthRange(field.unit as "ft" | "in"), dash: true }));
    default:
      return inRange(field, readPlain(field, typed));
  }
}

/** What is wrong with a job's answers, by the key of the field; empty where nothing is. Only its structure's fields count. */
export function problemsOf(job: Job): Record<string, string> {
  const problems = allProblemsOf(job);
  const structure = structureOf(job);
  return Object.fromEntries(Object.entries(problems).filter(([key]) => belongs(fieldOf(key), structure)));
}

/** The same of every field, those of other structures too. */
export function allProblemsOf(job: Job): Record<string, string> {
  const problems: Record<string, string> = {};
  for (const field of fields) {
    try {
      const value = readField(field, job[field.key]);
      if (value === null && field.default !== null && isNeeded(field)) problems[field.key] = messages.needed;
    } catch (refusal) {
      if (!(refusal instanceof Refusal)) throw refusal;
      problems[field.key] = refusal.message;
    }
  }
  return problems;
}

/** A blank stands for its default where the field asks for a figure that nothing else can give. */
const isNeeded = ({ key }: Field) => /^(size|panel_1|spacing|arena_(length|width))$/.test(key);

/** The numbers that answer a field of several, each in its range; none where it is left blank. */
export const numbersOf = (job: Job, key: string): number[] => {
  const answer = job[key];
  return answer === null || answer === undefined ? [] : severalIn(fieldOf(key), answer);
};

function severalIn(field: Question, typed: number | string): number[] {
  const unit = field.unit === "ft" ? "ft" : undefined;
  const values = readNumbers(typed, { unit, least: field.range![0], most: field.range![1], dash: false });
  if (!field.many!.includes(values.length)) throw notAllowed(messages.many(field));
  return values.map((value) => inRange(field, value));
}

/** A number as people write it, with or without the field's own unit: $1,200, 5 %, 16 cu yd or 16 yd. */
function readPlain(field: Question, typed: number | string): number {
  if (typeof typed === "number") return typed;
  const bare = typed
    .replace(/^\$\s*|\s*%$/g, "")
    .replace(field.unit === "cu yd" ? /\s*(cu\.? ?)?(yd|yards?)\.?$/i : /$/, "");
  const grouped = field.kind === "money" && /^\d{1,3}(,\d{3})+(\.\d+)?$/.test(bare);
  return readNumber(grouped ? bare.replace(/,/g, "") : bare);
}

function inRange(field: Question, value: number): number {
  const [least, most] = field.range!;
  if (!(value >= least && value <= most)) throw notAllowed(messages.within(field));
  const isWhole = field.kind === "count" || (field.kind === "numbers" && field.unit === "");
  if (isWhole && !Number.isInteger(value)) throw notAllowed(messages.whole(field));
  return value;
}
