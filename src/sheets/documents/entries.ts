import { type FieldValue, type Question } from "../../estimate/fields";

/** An entry of a document's own, such as a bid's number: it belongs to no job, and its cell in the document holds it. */
export type Entry = Question;

type Draft = Omit<Entry, "label" | "default" | "unit"> & Partial<Pick<Entry, "default" | "unit">>;

/** An entry from what is said of it, blank unless it says otherwise. */
export const entry = (en: string, es: string, draft: Draft): Entry => ({
  unit: "",
  default: null,
  ...draft,
  label: { en, es },
});

/** Those of some entries that are answered: a page shows no label beside nothing. */
export const answered = <E extends Entry>(
  entries: readonly E[],
  answers: Readonly<Record<string, FieldValue>>,
): E[] => entries.filter(({ key }) => (answers[key] ?? "") !== "");

/** A text of one or more lines. */
export const textEntry = (key: string, en: string, es: string, value: string | null = null): Entry =>
  entry(en, es, { key, kind: "text", default: value });

/** An amount of money; below 0 where it may be less. */
export const moneyEntry = (key: string, en: string, es: string, least = 0): Entry =>
  entry(en, es, { key, kind: "money", unit: "$", range: [least, 10_000_000] });

/** A number that counts documents of a kind from 1. */
export const numberEntry = (key: string, en: string, es: string): Entry =>
  entry(en, es, { key, kind: "count", range: [1, 999_999], default: 1 });
