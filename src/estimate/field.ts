import { type OfStructures, type Structure } from "./structures";

/** A text in the two languages of the job sites: American English and Spanish. */
export interface Label {
  en: string;
  es: string;
}

/** One of those languages. */
export type Language = keyof Label;

/** The groups that fields stand in, in the order of the estimate sheet. */
export type Section =
  | "job"
  | "pen"
  | "layout"
  | "site"
  | "fence"
  | "holes"
  | "gates"
  | "base"
  | "footing"
  | "hauling"
  | "supplies"
  | "equipment"
  | "labor"
  | "subcontract"
  | "charges";

/** The documents that can show a field. */
export type DocumentKind = "estimate" | "bid" | "price request" | "layout sheet";

/** What a field holds: a length in its unit, another number, several of them, a whole count, money, one of some words, or any text. */
export type FieldKind = "length" | "number" | "numbers" | "count" | "money" | "choice" | "text";

/** What a field's cell may hold; null is a blank. */
export type FieldValue = number | string | null;

/** One field of a job. Lengths are numbers in `unit`; percentages are whole percents (5 is 5 %). */
export interface Field extends OfStructures {
  key: string;
  label: Label;
  unit: string;
  kind: FieldKind;
  default: FieldValue;
  /** Least and most that a number may be. */
  range?: readonly [number, number];
  /** How many numbers it holds, where it holds several. */
  many?: readonly number[];
  options?: readonly string[];
  section: Section;
  /** Asked in the quick estimate; the others stand behind "more". */
  quick: boolean;
  /** The list of slots this field is one of, and its place in it from 1. */
  slot?: { list: SlotList; place: number };
  /** The gate, from 1, of which this field says more; it is asked with that gate. */
  ofGate?: number;
  /** The line of the takeoff that this field belongs to, where that is not the slot of its own key. */
  beside?: string;
  /** The key of the figure that this field, when filled in, takes the place of. */
  insteadOf?: string;
  /** The key of the line of which this field says how much the user has already. */
  onHandOf?: string;
  /** A figure that no formula works out rests on it: its sheet is then out of date until it is updated. */
  decides?: boolean;
  /** Written once with its sheet; another answer is another sheet. */
  settled?: boolean;
  documents: readonly DocumentKind[];
}

/** What is asked and what may answer it, of a job or of one of its documents. */
export type Question = Omit<Field, "section" | "quick" | "documents">;

/** The lists of like fields with a fixed number of places. */
export type SlotList = "panel" | "gate" | "leaf" | "truck";

/** How many places each list has. */
export const slots: Record<SlotList, number> = { panel: 6, gate: 4, leaf: 4, truck: 4 };

/** Documents that show a field: all of them, or the estimate alone. */
export const everywhere = ["estimate", "bid", "price request", "layout sheet"] as const;
const inHouse = ["estimate"] as const;

type Draft = Omit<Field, "label" | "documents" | "default" | "quick" | "unit"> &
  Partial<Pick<Field, "default" | "quick" | "unit" | "documents">>;

/** A field from what is said of it; it is asked behind "more" and shown in the estimate unless it says otherwise. */
export function field(en: string, es: string, draft: Draft): Field {
  return { unit: "", default: null, quick: false, documents: inHouse, ...draft, label: { en, es } };
}

/** The places of one list: each a field of its own, keyed `panel_1`, `panel_2`, …. */
export function inSlots(
  list: SlotList,
  en: string,
  es: string,
  draft: Omit<Draft, "key">,
  first: Partial<Field>,
): Field[] {
  return Array.from({ length: slots[list] }, (_, k) => ({
    ...field(`${en} ${k + 1}`, `${es} ${k + 1}`, { ...draft, key: `${list}_${k + 1}` }),
    slot: { list, place: k + 1 },
    ...(k === 0 ? first : {}),
  }));
}

/** The count that the user sets in the place of a computed one. */
export function instead(key: string, en: string, es: string, section: Section): Field {
  return field(`${en}: use instead`, `${es}: usar en su lugar`, {
    key: `${key}_use`,
    kind: "count",
    range: [0, 10_000],
    section,
    insteadOf: `${key}_count`,
  });
}

/** The same of every place of a list. */
export const insteadOfSlots = (
  list: SlotList,
  en: string,
  es: string,
  section: Section,
  first: Partial<Field> = {},
) =>
  Array.from({ length: slots[list] }, (_, k) => ({
    ...instead(`${list}_${k + 1}`, `${en} ${k + 1}`, `${es} ${k + 1}`, section),
    ...(k === 0 ? first : {}),
  }));

/** How many pieces of every place of a list the user has already. */
export const onHandOfSlots = (list: SlotList, en: string, es: string, section: Section) =>
  slotKeys(list).map((key, k) =>
    field(`${en} ${k + 1}: on hand`, `${es} ${k + 1}: en existencia`, {
      key: `${key}_stock`,
      kind: "count",
      range: [0, 10_000],
      section,
      onHandOf: key,
    }),
  );

/** Which of the gates something is said of: their numbers from 1, one or several. */
export const gateNumbers = (key: string, en: string, es: string, draft: Partial<Draft> = {}) =>
  field(en, es, {
    key,
    kind: "numbers",
    range: [1, slots.gate],
    many: Array.from({ length: slots.gate }, (_, k) => k + 1),
    section: "gates",
    documents: everywhere,
    ...draft,
  });

/** Whether a field is one of those. */
export const holdsGateNumbers = ({ kind, range }: Question) => kind === "numbers" && range![1] === slots.gate;

/** Fields of one structure alone, or of some; a field that says its own structures keeps them. */
export const only = (structures: Structure | readonly Structure[], ...some: Field[]): Field[] =>
  some.map((one) => ({ structures: typeof structures === "string" ? [structures] : structures, ...one }));

/** A share in whole percents. */
export const percent = (
  key: string,
  en: string,
  es: string,
  section: Section,
  most: number,
  value: number | null,
  beside?: string,
) => field(en, es, { key, kind: "number", unit: "%", range: [0, most], default: value, section, beside });

/** Hours of labor that one piece of work takes; the defaults are common practice, no source. */
export const hours = (what: string, en: string, es: string, value: number) =>
  field(en, es, {
    key: `hours_${what}`,
    kind: "number",
    unit: "hr",
    range: [0, 100],
    default: value,
    section: "labor",
  });

/** Days that a rented machine is on the job; blank where there is none. */
export const days = (machine: string, en: string, es: string) =>
  field(en, es, { key: machine, kind: "number", unit: "days", range: [0, 100], section: "equipment" });

/** The keys of a list of slots in order: panel_1, panel_2, …. */
export const slotKeys = (list: SlotList) => Array.from({ length: slots[list] }, (_, k) => `${list}_${k + 1}`);
