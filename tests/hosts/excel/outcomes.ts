import { HostError } from "../../../src/hosts/host";
import { type StoredSheet } from "./memory";
import { type CountingWorkbook } from "./stand-in";

/** The sentence of a refusal; anything but a HostError fails the test. */
export async function refused(attempt: Promise<unknown>): Promise<string> {
  const error: unknown = await attempt.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  expect(error).toBeInstanceOf(HostError);
  return (error as HostError).message;
}

/** Every sheet's cells, looks and pictures, to tell whether a workbook is as it was. */
export const state = ({ book }: CountingWorkbook) => structuredClone([book.sheets, book.active.name]);

/** A sheet of the stand-in by its name. */
export const sheetNamed = ({ book }: CountingWorkbook, name: string): StoredSheet =>
  book.sheets.find((sheet) => sheet.name === name)!;

/** The names of the sheets, in order. */
export const sheetNames = ({ book }: CountingWorkbook): string[] => book.sheets.map(({ name }) => name);

/** Puts content into a sheet of the stand-in as if it had always been there. */
export function put(
  sheet: StoredSheet,
  row: number,
  column: number,
  value: number | string,
  formula = value,
): void {
  sheet.cells.set(`${row} ${column}`, { value, formula });
}
