import { notAllowed, Refusal } from "../units/refusal";
import { readLength } from "../units/length";
import { fields, slotKeys, type Field, type FieldValue, type SlotList } from "./fields";
import { messages } from "./messages";

/** A job's answers by the key of their field; every field has one, null where it is blank. */
export type Job = Record<string, FieldValue>;

/** A new job: every field at its default. */
export const newJob = (): Job => Object.fromEntries(fields.map((field) => [field.key, field.default]));

/** The lengths that a list of slots holds, blanks passed over. */
export const lengthsIn = (job: Job, list: SlotList) =>
  slotKeys(list).flatMap((key) => (job[key] === null ? [] : [job[key] as number]));

/**
 * What a person typed, or a cell holds, as a field's value: lengths in any notation become numbers in the field's
 * unit, an empty text becomes a blank. Refuses what the field does not allow, in a sentence that says what it does.
 */
export function readField(field: Field, raw: unknown): FieldValue {
  const typed = typeof raw === "string" ? raw.trim() : raw;
  if (typed === null || typed === undefined || typed === "") return null;
  switch (field.kind) {
    case "text":
      return String(typed);
    case "choice": {
      const found = field.options!.find((option) => option.toLowerCase() === String(typed).toLowerCase());
      if (found === undefined) throw notAllowed(messages.oneOf(field.options!));
      return found;
    }
    case "length":
      return inRange(field, readInUnit(field, typed));
    default:
      return inRange(field, readNumber(field, typed));
  }
}

/** What is wrong with a job's answers, by the key of the field; empty where nothing is. */
export function problemsOf(job: Job): Record<string, string> {
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
const isNeeded = (field: Field) => field.key === "size" || field.key === "panel_1";

function readInUnit(field: Field, typed: unknown): number {
  if (typeof typed === "number") return typed;
  return readLength(String(typed), field.unit === "in" ? "in" : "ft", { dash: true });
}

function readNumber(field: Field, typed: unknown): number {
  if (typeof typed === "number") return typed;
  const bare = String(typed).replace(/^\$\s*|\s*%$/g, "");
  const grouped = /^\d{1,3}(,\d{3})+(\.\d+)?$/.test(bare) && field.kind === "money";
  const read = Number(grouped ? bare.replace(/,/g, "") : bare.replace(/^(-?\d*),(\d{1,2})$/, "$1.$2"));
  if (bare === "" || !Number.isFinite(read)) throw notAllowed(messages.aNumber(field));
  return read;
}

function inRange(field: Field, value: number): number {
  const [least, most] = field.range!;
  if (!(value >= least && value <= most)) throw notAllowed(messages.within(field));
  if (field.kind === "count" && !Number.isInteger(value)) throw notAllowed(messages.whole(field));
  return value;
}
