import { COUNTED_WITHIN } from "../estimate/fixed-keys";
import { fields, fieldsOf, type FieldValue } from "../estimate/fields";
import { type Figure } from "../estimate/figures";
import { type Job } from "../estimate/job";
import { structures, type Structure } from "../estimate/structures";
import { allOwnKeys, ownParts, type OwnLine } from "../estimate/own-lines";
import { equal } from "../units/rounding";
import { isError, type Cell } from "../units/cell";
import { address } from "./address";
import { columns, headRows, keysOf, laidOut, estimateMark } from "./estimate-layout";
import { keyedCells, keyList, type KeyedCell, type Shown } from "./keyed-cells";

export { type KeyedCell, type Shown };

/** An estimate as its sheet holds it. */
export interface EstimateSheet {
  name: string;
  structure: Structure;
  /** The inputs; a field that the sheet lacks has its default. */
  job: Job;
  own: OwnLine[];
  cells: Record<string, KeyedCell>;
  /** Fields of the list for which the sheet has no key. */
  missing: string[];
}

/** True for the sheet of an estimate. */
export const isEstimate = ({ values }: Shown) => values[0]?.[0] === estimateMark;

/**
 * Reads an estimate from what its sheet shows. Column A says which keys a row holds and the hidden first row in which
 * column each stands, so inserted rows and columns do no harm. Of two rows with one key the upper counts. An input
 * whose key is missing is read where its row still stands.
 */
export function readEstimate(sheet: Shown): EstimateSheet {
  const cells = keyedCells(sheet.values);
  const structure = structureIn(cells);
  const missing = fieldsOf(structure)
    .filter(({ key, settled }) => !(key in cells) && !settled)
    .map(({ key }) => key);
  const found =
    missing.length > 0 ? keyedCells(withKeysBack({ cells, missing, structure }, sheet.values)) : cells;
  const valueOf = (key: string): Cell => found[key]?.value ?? null;
  const job: Job = {};
  for (const field of fields)
    job[field.key] = field.key in found ? asField(valueOf(field.key)) : field.default;
  job.structure = structure;
  const number = (key: string) => (typeof valueOf(key) === "number" ? (valueOf(key) as number) : null);
  return {
    name: sheet.name,
    structure,
    job,
    own: allOwnKeys.map((key) => ({
      key,
      quantity: number(`${key}_quantity`),
      price: number(`${key}_price`),
      taxed: String(valueOf(`${key}_taxed`) ?? "").toLowerCase() === "yes",
    })),
    cells,
    missing,
  };
}

/** What of an estimate says where its keys belong. */
type KeysOf = Pick<EstimateSheet, "cells" | "missing" | "structure">;

/** What a sheet says it is of; where that is gone, what its figures say. A sheet of the time before says neither. */
const structureIn = ({ structure, post_circle }: EstimateSheet["cells"]): Structure =>
  structures.find((one) => one === structure?.value) ?? (post_circle ? "post pen" : "panel pen");

/** What the sheet shows with the missing keys back in their rows, as far as those still stand. */
function withKeysBack(sheet: KeysOf, values: Cell[][]): Cell[][] {
  const back = new Map(restoredKeys(sheet, values).map(({ row, value }) => [row, value]));
  return values.map((row, at) => (back.has(at) ? [back.get(at)!, ...row.slice(1)] : row));
}

const asField = (value: Cell): FieldValue =>
  isError(value) ? value.error : typeof value === "boolean" ? String(value) : value === "" ? null : value;

/** True for an estimate whose figures are fixed: a plain copy, in which nothing asks this add-in any more. */
export function isPlainCopy({ cells }: EstimateSheet, formulas: Cell[][]): boolean {
  const asks = ({ row, column }: KeyedCell) => /\bPEN[._]/i.test(String(formulas[row]?.[column] ?? ""));
  return cells.area !== undefined && !Object.values(cells).some(asks);
}

/** What the user typed into the lines of their own, by key. */
export const ownTyped = ({ cells }: EstimateSheet): Record<string, Cell> =>
  Object.fromEntries(
    allOwnKeys
      .flatMap((key) => ownParts.map((part) => `${key}_${part}`))
      .map((key) => [key, cells[key]?.value ?? null]),
  );

/** A figure of the sheet that is not what its inputs lead to: changed by the user. */
export interface OwnChange {
  key: string;
  address: string;
  shown: Cell;
  figured: Figure;
}

/** The cells of an estimate whose figures the user changed: what they show beside what the inputs lead to. */
export function ownChanges(sheet: EstimateSheet, figures: Record<string, Figure>): OwnChange[] {
  return Object.entries(figures).flatMap(([key, figured]) => {
    const found = sheet.cells[key];
    if (!found || alike(found.value, figured)) return [];
    return [{ key, address: address(found), shown: found.value, figured }];
  });
}

function alike(shown: Cell, figured: Figure): boolean {
  if (typeof shown === "number" && typeof figured === "number") return equal(shown, figured);
  return (shown ?? "") === figured;
}

/** The input cells that have to change so that the sheet holds this job: keyed cells only. */
export function changedInputs(
  sheet: EstimateSheet,
  job: Job,
): { row: number; column: number; value: FieldValue }[] {
  return fields.flatMap(({ key, settled }) => {
    if (settled) return [];
    const found = sheet.cells[key];
    const same = found && alikeInput(asField(found.value), job[key]);
    return !found || same ? [] : [{ row: found.row, column: found.column, value: job[key] ?? null }];
  });
}

const alikeInput = (one: FieldValue | undefined, other: FieldValue | undefined) =>
  (one ?? null) === (other ?? null);

/** The fields of a sheet that numbers of the time of writing rest on. */
const decidingIn = ({ cells, structure }: EstimateSheet) =>
  fieldsOf(structure).filter(({ key, decides }) => decides && `${key}_written` in cells);

/** True where an input is not what the sheet's numbers of the time of writing were worked out from. */
export const isOutOfDate = (sheet: EstimateSheet) =>
  decidingIn(sheet).some(
    ({ key }) => !alikeInput(asField(sheet.cells[`${key}_written`].value), sheet.job[key]),
  ) || isCountedOnAnother(sheet);

/** True where panels by other were counted on a pen of another size. */
function isCountedOnAnother({ cells }: EstimateSheet): boolean {
  const [now, then] = [cells.pin_circle?.value, cells.pin_circle_fixed?.value];
  if (typeof now !== "number" || typeof then !== "number" || then === 0) return false;
  return Math.abs(now - then) > COUNTED_WITHIN;
}

/**
 * The cells beside the inputs that have to change so that the numbers of the time of writing are those of this job
 * (`fixedOf`): the numbers, and what they were worked out from. None where the job has no answer.
 */
export function changedFixed(
  sheet: EstimateSheet,
  job: Job,
  fixed: Record<string, number>,
): { row: number; column: number; value: FieldValue }[] {
  const numbers = Object.entries(fixed).map(([key, value]): [string, FieldValue] => [`${key}_fixed`, value]);
  if (numbers.length === 0) return [];
  const from = decidingIn(sheet).map(({ key }): [string, FieldValue] => [`${key}_written`, job[key] ?? null]);
  return [...numbers, ...from].flatMap(([key, value]) => {
    const found = sheet.cells[key];
    if (!found || alikeInput(asField(found.value), value)) return [];
    return [{ row: found.row, column: found.column, value }];
  });
}

/**
 * The key cells that put missing fields back: rows that still stand where the layout has them between their
 * neighbors, with an empty key. A field whose whole row is gone is not among them.
 */
export function restoredKeys(
  sheet: KeysOf,
  values: Cell[][],
): { row: number; column: number; value: string }[] {
  const rows = laidOut(sheet.structure).sections.flatMap((section) => section.rows);
  const planned = rows.map((row) => ({ row: row.row, keys: Object.entries(keysOf(row)) }));
  const rowOnSheet = (keys: [string, string][]) =>
    keys.map(([, key]) => sheet.cells[key]?.row).find((row) => row !== undefined);
  return planned.flatMap(({ row, keys }, k) => {
    if (!keys.some(([, key]) => sheet.missing.includes(key)) || rowOnSheet(keys) !== undefined) return [];
    const before = planned
      .slice(0, k)
      .reverse()
      .find((other) => rowOnSheet(other.keys) !== undefined);
    const later = planned.slice(k + 1).find((other) => rowOnSheet(other.keys) !== undefined);
    const from = before
      ? { planned: before.row, now: rowOnSheet(before.keys)! }
      : { planned: headRows.headers, now: headRows.headers };
    const at = from.now + row - from.planned;
    if (later && rowOnSheet(later.keys)! - from.now !== later.row - from.planned) return [];
    if ((values[at]?.[columns.key] ?? "") !== "") return [];
    return [{ row: at, column: columns.key, value: keyList(keys) }];
  });
}
