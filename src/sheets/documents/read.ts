import { type FieldValue } from "../../estimate/fields";
import { readField } from "../../estimate/job";
import { isError, type Cell } from "../../units/cell";
import { Refusal } from "../../units/refusal";
import { keyedCells, type KeyedCell, type Shown } from "../keyed-cells";
import { type Entry } from "./entries";

/** A document as its sheet holds it. */
export interface DocumentSheet {
  name: string;
  cells: Record<string, KeyedCell>;
  /** Its entries by key; blank where a cell is blank, gone, or holds what cannot be read. */
  entries: Record<string, FieldValue>;
  /** Why an entry cannot be read, by key. */
  problems: Record<string, string>;
}

/** Reads a document's own entries back from what its sheet shows, wherever its rows and columns stand now. */
export function readDocument(sheet: Shown, asked: readonly Entry[]): DocumentSheet {
  const cells = keyedCells(sheet.values);
  const entries: DocumentSheet["entries"] = {};
  const problems: DocumentSheet["problems"] = {};
  for (const entry of asked) {
    entries[entry.key] = null;
    try {
      entries[entry.key] = readField(entry, raw(cells[entry.key]?.value ?? null));
    } catch (refusal) {
      if (!(refusal instanceof Refusal)) throw refusal;
      problems[entry.key] = refusal.message;
    }
  }
  return { name: sheet.name, cells, entries, problems };
}

const raw = (value: Cell) => (isError(value) ? value.error : value);

/** The number that a keyed cell of a document shows; undefined where it shows none. */
export function shownNumber({ cells }: Pick<DocumentSheet, "cells">, key: string): number | undefined {
  const value = cells[key]?.value;
  return typeof value === "number" ? value : undefined;
}
