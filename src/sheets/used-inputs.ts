import { type Label, type Language } from "../estimate/fields";
import { type Cell } from "../units/cell";
import { type Place } from "./address";
import { put } from "./estimate-cells";
import { call, cell, number, operate, range, when, type Expression } from "./expression";
import { type PlanCell } from "./plan";

/** An input that a document was written from, and where the estimate holds its present value. */
export interface UsedInput {
  label: Label;
  value: Cell;
  now?: Place;
}

/** Where a document lists them, beside what it prints: the row of their headers, the columns, and what those say. */
export interface UsedTable {
  top: number;
  columns: { label: number; used: number; now: number; changed: number };
  language: Language;
  labels: Record<"inputs" | "used" | "now" | "changed", Label>;
}

/** The inputs that a document was written from, each beside what the estimate has now, and whether they part. */
export function usedCells(used: readonly UsedInput[], table: UsedTable): PlanCell[] {
  const { top, columns, language, labels } = table;
  const head = (name: "used" | "now" | "changed") =>
    put(top, columns[name], labels[name][language], "headingCenter");
  return [
    put(top, columns.label, labels.inputs[language], "heading"),
    head("used"),
    head("now"),
    head("changed"),
    ...used.flatMap((input, k) => usedRow(input, top + 1 + k, table)),
  ];
}

/** Whether one of them is no longer what the document was written from. */
export function hasMovedOn(used: readonly UsedInput[], { top, columns, language, labels }: UsedTable) {
  const mark = (row: number) => ({ row, column: columns.changed });
  const marks = range(mark(top + 1), mark(top + used.length));
  return operate(call("COUNTIF", marks, labels.changed[language]), ">", 0);
}

function usedRow({ label, value, now }: UsedInput, row: number, { columns, language, labels }: UsedTable) {
  const cells: PlanCell[] = [
    put(row, columns.label, label[language], "label"),
    { row, column: columns.used, says: { kind: "constant", value }, style: "fixed" },
  ];
  if (!now) return cells;
  const parts = differs(cell({ row, column: columns.used }), cell({ row, column: columns.now }), value);
  const changed = labels.changed[language];
  return [
    ...cells,
    put(row, columns.now, when(operate(cell(now), "=", ""), "", cell(now)), "fixed"),
    put(row, columns.changed, call("IFERROR", when(parts, changed, ""), changed), "warning"),
  ];
}

const differs = (before: Expression, today: Expression, value: Cell) =>
  typeof value === "string" ? operate(before, "<>", today) : operate(number(before), "<>", number(today));
