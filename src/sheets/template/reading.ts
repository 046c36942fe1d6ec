import { distance } from "fastest-levenshtein";
import { type Cell } from "../../units/cell";
import { type Place } from "../address";
import { templateFields } from "./field-names";

/** What braces name: a field, and the estimate it is of where they say which. */
export interface Reference {
  /** As it was written, without the braces. */
  written: string;
  estimate?: string;
  name: string;
}

/** A cell of a template that names at least one field: its text in pieces, in order. */
export interface TemplateCell extends Place {
  pieces: (string | Reference)[];
}

const braces = /\{\{[^{}]*\}\}|\{([^{}\n]{1,120})\}/g;

const words = (text: string) => text.trim().toLowerCase().replace(/\s+/g, " ");

function referenceOf(written: string): Reference {
  const colon = written.lastIndexOf(":");
  const name = words(written.slice(colon + 1));
  return colon < 0 ? { written, name } : { written, name, estimate: written.slice(0, colon).trim() };
}

/** A text in pieces: what stands outside the braces, and what they name. Doubled braces and what is in them are text. */
export function piecesOf(text: string): (string | Reference)[] {
  const pieces: (string | Reference)[] = [];
  const add = (piece: string) => {
    if (typeof pieces.at(-1) === "string") pieces.push((pieces.pop() as string) + piece);
    else if (piece !== "") pieces.push(piece);
  };
  let after = 0;
  for (const found of text.matchAll(braces)) {
    add(text.slice(after, found.index));
    if (found[1] === undefined) add(found[0]);
    else pieces.push(referenceOf(found[1]));
    after = found.index + found[0].length;
  }
  add(text.slice(after));
  return pieces;
}

/** The cells of a sheet that name fields. A formula is never one: its braces are the spreadsheet's. */
export function templateCells(formulas: readonly (readonly Cell[])[]): TemplateCell[] {
  return formulas.flatMap((cells, row) =>
    cells.flatMap((value, column) => {
      if (typeof value !== "string" || value.startsWith("=")) return [];
      const pieces = piecesOf(value);
      return pieces.some((piece) => typeof piece !== "string") ? [{ row, column, pieces }] : [];
    }),
  );
}

/** The name of a known field that is nearest to one that is not: by the fewest letters changed. */
export function nearestField(name: string, known: Iterable<string> = templateFields.keys()): string {
  let nearest = "";
  let least = Infinity;
  for (const one of known) {
    const changes = distance(name, one);
    if (changes < least) [nearest, least] = [one, changes];
  }
  return nearest;
}
