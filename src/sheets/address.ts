/** A cell's place, counted from 0; without a sheet it lies on the sheet of the formula that names it. */
export interface Place {
  sheet?: string;
  row: number;
  column: number;
  /** Written with a $ before the row, before the column. */
  fixedRow?: boolean;
  fixedColumn?: boolean;
}

/** The letters of a column counted from 0: 0 is A, 25 is Z, 26 is AA. */
export function columnName(column: number): string {
  let name = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26))
    name = String.fromCharCode(65 + ((rest - 1) % 26)) + name;
  return name;
}

/** The number, from 0, of a column given in letters. */
export function columnNumber(name: string): number {
  return [...name.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

/** A sheet's name as a formula writes it: quoted unless it is a plain word that no address could be. */
export function sheetName(name: string): string {
  const plain = /^[A-Za-z_][A-Za-z_]*$/.test(name) && name.length > 3 && !/^(true|false)$/i.test(name);
  return plain ? name : `'${name.replace(/'/g, "''")}'`;
}

/** True for a name that a sheet can have in every spreadsheet: 1 to 31 characters, none of : \\ / ? * [ ], no quote at an end. */
export const isSheetName = (name: string) => /^[^:\\/?*[\]]{1,31}$/.test(name) && !/^'|'$/.test(name);

/** A place as a formula writes it: B4, $B$4, 'Estimate 2'!B4. */
export function address(place: Place): string {
  const cell =
    (place.fixedColumn ? "$" : "") +
    columnName(place.column) +
    (place.fixedRow ? "$" : "") +
    String(place.row + 1);
  return place.sheet === undefined ? cell : `${sheetName(place.sheet)}!${cell}`;
}
