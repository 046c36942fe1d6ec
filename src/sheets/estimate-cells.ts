import { fieldOf, type Field, type Question } from "../estimate/fields";
import { figureField } from "../estimate/figure-list";
import { choiceOf, type Job } from "../estimate/job";
import { priceKinds } from "../estimate/prices";
import { isWhole } from "../estimate/takeoff-line";
import { behindFigures } from "./estimate-columns";
import { columns, keysOf, type LaidRow } from "./estimate-layout";
import { type Left, type Right } from "./estimate-sections";
import { blank, call, cell, expression, operate, pen, when, type Expression, type Term } from "./expression";
import { keyList } from "./keyed-cells";
import { countedBy, kindOfLine, namedItems } from "./line-items";
import { messages } from "./messages";
import { type PlanCell, type Validation } from "./plan";
import { type StyleName } from "./styles";

/** The unit of a line; that of base and sand hangs on how they are sold. */
const unitOfLine = (key: string, says: Record<string, Expression>): Term =>
  says[`${key}_unit_shown`] ?? priceKinds[kindOfLine(key)!].unit;

/** A cell of a plan that is no input. */
export const put = (row: number, column: number, says: Term, style: StyleName): PlanCell => ({
  row,
  column,
  says: expression(says),
  style,
});

/** The cells of one row: its keys, its printed part by what stands there, and its inputs. */
export function rowCells(row: LaidRow, job: Job, says: Record<string, Expression>): PlanCell[] {
  const keys = Object.entries(keysOf(row));
  const cells = keys.length ? [put(row.row, columns.key, keyList(keys), "key")] : [];
  if (row.left) cells.push(...leftCells(row.row, row.left, says));
  if (row.left?.fixed) cells.push(put(row.row, columns.fixed, says[`${row.left.key}_fixed`], "key"));
  if (row.right?.field === "hinge_room") cells.push(put(row.row, columns.more, says.hinge_room_used, "key"));
  if (row.right?.field || row.right?.use) cells.push(...inputCells(row.row, row.right, job));
  else if (row.left?.kind === "own") cells.push(put(row.row, columns.label, messages.ownLine, "note"));
  if (row.right?.use && row.left?.kind !== "line")
    cells.push(put(row.row, columns.count, says[`${row.right.use}_count`], "count"));
  return cells;
}

const styleOfFigure = {
  feet: "figure",
  area: "figure",
  yards: "figure",
  percent: "percent",
  inches: "figure",
  money: "money",
  whole: "count",
} as const;

function leftCells(row: number, left: Left, says: Record<string, Expression>): PlanCell[] {
  const { key } = left;
  switch (left.kind) {
    case "figure": {
      const { label, unit, kind } = figureField(key);
      const total = key === "total";
      const behind = says[behindFigures[key]];
      const at = kind === "money" ? columns.amount : columns.quantity;
      const figure = put(row, at, says[key], total ? "total" : styleOfFigure[kind]);
      if (total) return totalCells(row, label.en, unit, figure);
      const shown = kind === "feet" ? [put(row, columns.price, feetInches(cell(figure)), "feetInches")] : [];
      return [
        put(row, columns.item, label.en, "label"),
        figure,
        put(row, columns.unit, unit, "unit"),
        ...shown,
        ...(behind ? [put(row, columns.pick, behind, "key")] : []),
      ];
    }
    case "warning":
      return [{ ...put(row, columns.item, says[key], "warning"), across: left.across }];
    case "own":
      return ownCells(row, says[`${key}_amount`]);
    case "line": {
      const item: Term = namedItems[key] ?? says[`${key}_item`];
      const unit = unitOfLine(key, says);
      const kind = kindOfLine(key);
      const inParts = ["base", "sand", "stone"].includes(key) || (kind !== undefined && !isWhole(kind));
      const style = inParts ? "figure" : "count";
      const used = (term: Term) =>
        when(operate(call("N", cell({ row, column: columns.quantity })), "=", 0), "", term);
      return [
        put(row, columns.item, item, "label"),
        put(row, columns.quantity, says[`${key}_quantity`], style),
        put(row, columns.unit, used(unit), "unit"),
        put(row, columns.price, says[`${key}_price`], "money"),
        put(row, columns.amount, says[`${key}_amount`], "money"),
        put(row, columns.taxed, says[`${key}_taxed`], "mark"),
        put(row, columns.note, says[`${key}_note`], "priceNote"),
        put(row, columns.kind, says[`${key}_kind`], "key"),
        put(row, columns.count, says[`${key}_count`], style),
        ...(says[`${key}_opening`] ? [put(row, columns.limit, says[`${key}_opening`], "key")] : []),
        ...(["pick", "size", "left", "fewer", "more", "limit"] as const).flatMap((beside) =>
          says[`${key}_${beside}`]
            ? [put(row, columns[beside], says[`${key}_${beside}`], beside === "left" ? "count" : "key")]
            : [],
        ),
      ];
    }
  }
}

/** The row of the total, ruled off from label to amount. */
const totalCells = (row: number, label: string, unit: string, figure: PlanCell): PlanCell[] => [
  put(row, columns.item, label, "totalLabel"),
  { row, column: columns.quantity, says: blank, style: "totalLabel" },
  put(row, columns.unit, unit, "totalUnit"),
  { row, column: columns.price, says: blank, style: "totalLabel" },
  figure,
];

const feetInches = (of: Expression) => when(operate(call("N", of), "=", 0), "", pen("FEET_INCHES", of));

function ownCells(row: number, amount: Expression): PlanCell[] {
  const input = (column: number, style: StyleName, accepts?: Validation): PlanCell => ({
    row,
    column,
    says: { kind: "constant", value: null },
    style,
    input: true,
    accepts,
  });
  const money: Validation = {
    kind: "number",
    least: -10_000_000,
    most: 10_000_000,
    message: messages.between(-10_000_000, 10_000_000),
  };
  return [
    input(columns.item, "ownText"),
    input(columns.quantity, "ownNumber", money),
    input(columns.unit, "ownText"),
    input(columns.price, "ownNumber", money),
    put(row, columns.amount, amount, "ownAmount"),
    input(columns.taxed, "ownText", { kind: "list", options: ["yes", "no"], message: messages.yesOrNo }),
  ];
}

function inputCells(row: number, { field, use, hand, written }: Right, job: Job): PlanCell[] {
  const cells: PlanCell[] = [];
  if (field) {
    const asked = fieldOf(field);
    cells.push(put(row, columns.label, asked.label.en, "label"));
    cells.push(
      asked.settled
        ? put(row, columns.input, choiceOf(job, field), "text")
        : inputCell(row, columns.input, asked, job),
    );
    if (written)
      cells.push({
        row,
        column: columns.written,
        says: { kind: "constant", value: job[field] },
        style: "key",
      });
    cells.push(put(row, columns.inputUnit, asked.unit, "unit"));
    if (asked.kind === "length" && asked.unit === "ft")
      cells.push(
        put(row, columns.feetInches, feetInches(cell({ row, column: columns.input })), "feetInches"),
      );
  } else if (use) cells.push(put(row, columns.label, namedItems[use] ?? countedBy(use), "label"));
  if (use) cells.push(inputCell(row, columns.use, fieldOf(`${use}_use`), job));
  if (hand) cells.push(inputCell(row, columns.hand, fieldOf(`${hand}_stock`), job));
  return cells;
}

function inputCell(row: number, column: number, field: Field, job: Job): PlanCell {
  const isText = ["text", "choice", "numbers"].includes(field.kind);
  return {
    row,
    column,
    says: { kind: "constant", value: job[field.key] },
    style: isText ? "inputText" : field.kind === "money" ? "inputMoney" : "inputNumber",
    input: true,
    accepts: validationOf(field),
  };
}

/** What a field's cell accepts, from the list of fields. */
export function validationOf({ kind, range: limits, options, unit }: Question): Validation | undefined {
  if (kind === "choice") return { kind: "list", options: [...options!], message: messages.oneOf(options!) };
  if (!limits || kind === "numbers") return undefined;
  const [least, most] = limits;
  const message =
    kind === "count"
      ? messages.wholeBetween(least, most)
      : kind === "length"
        ? messages.inUnit(unit, least, most)
        : messages.between(least, most);
  return { kind: "number", least, most, whole: kind === "count", message };
}
