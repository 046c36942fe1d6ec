import Papa from "papaparse";
import { type Cell } from "../units/cell";

/** A pasted or opened text as a table: parted by tabs, commas or semicolons, quoted where a cell holds one of these. */
export function tableOfText(text: string): Cell[][] {
  const parted = Papa.parse<string[]>(text.replace(/^\ufeff/, ""), {
    delimitersToGuess: ["\t", ";", ","],
    skipEmptyLines: false,
  });
  return parted.data;
}
