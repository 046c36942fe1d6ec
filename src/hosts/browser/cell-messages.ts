import { type CellError } from "../../units/cell";

/** A cell, by the id of its sheet; rows and columns count from 0. */
export interface CellPlace {
  sheet: string;
  row: number;
  column: number;
}

/** Why cells show errors: what each function last said for the cell it was worked out for. */
export class CellMessages {
  private readonly said = new Map<string, Map<string, CellError>>();

  /** Keeps what a function said for a cell; a result without an error clears what it said before. */
  note(place: CellPlace, from: string, error: CellError | undefined): void {
    const key = `${place.sheet} ${place.row} ${place.column}`;
    const here = this.said.get(key) ?? new Map<string, CellError>();
    if (error?.message) this.said.set(key, here.set(from, error));
    else if (here.delete(from) && here.size === 0) this.said.delete(key);
  }

  /** The reason for the error that a cell shows now, where a function gave one. */
  find(place: CellPlace, code: string): string | undefined {
    const here = this.said.get(`${place.sheet} ${place.row} ${place.column}`);
    return [...(here?.values() ?? [])].find(({ error }) => error === code)?.message;
  }

  /** Forgets everything: another workbook has come, or rows have moved and every cell is worked out again. */
  clear(): void {
    this.said.clear();
  }
}
