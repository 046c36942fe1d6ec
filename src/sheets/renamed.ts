import { sheetName } from "./address";
import { freeName } from "./free-name";
import { type SheetData } from "./workbook-content";

/** A text, which is passed over, or what names a sheet before an exclamation mark; a sheet of another workbook is none. */
const named = /"(?:[^"]|"")*"|(?<![\p{L}\p{N}_.\]:])(?:'((?:[^']|'')+)'|([\p{L}_][\p{L}\p{N}_.]*))!/gu;

/** A formula in which sheets bear the names that `renamed` gives for their old ones, in small letters. */
export function withRenamed(formula: string, renamed: ReadonlyMap<string, string>): string {
  return formula.replace(named, (whole, quoted?: string, plain?: string) => {
    const name = renamed.get((quoted?.replace(/''/g, "'") ?? plain ?? "").toLowerCase());
    return name === undefined ? whole : `${sheetName(name)}!`;
  });
}

/** Sheets under names that none of `taken` is, with formulas that follow: nothing else in them changes. */
export function underFreeNames(sheets: readonly SheetData[], taken: readonly string[]): SheetData[] {
  const all = [...taken];
  const names = sheets.map(({ name }) => {
    // A name of a later sheet is not free either, so that no two of them change places.
    const free = freeName(name, [
      ...all,
      ...sheets.map((other) => other.name).filter((other) => other !== name),
    ]);
    all.push(free);
    return free;
  });
  const renamed = new Map(sheets.map(({ name }, k) => [name.toLowerCase(), names[k]]));
  return sheets.map((sheet, k) => ({
    ...sheet,
    name: names[k],
    cells: sheet.cells.map((cell) =>
      cell.formula ? { ...cell, formula: withRenamed(cell.formula, renamed) } : cell,
    ),
  }));
}
