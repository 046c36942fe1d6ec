import { fieldOf, type Field } from "../estimate/fields";
import { figureField } from "../estimate/figure-list";
import { type Job } from "../estimate/job";
import { cautions } from "../estimate/messages";
import { priceKinds, type PriceKind } from "../estimate/prices";
import {
  columns,
  headRows,
  keysOf,
  laidOut,
  placesOf,
  type LaidRow,
  type LaidSection,
  type Right,
} from "./estimate-layout";
import {
  allOwnKeys,
  lineFormulas,
  ownAmount,
  penFormulas,
  sandFormulas,
  totalFormulas,
  type Sheet,
} from "./estimate-formulas";
import {
  call,
  cell,
  expression,
  operate,
  pen,
  range,
  text,
  when,
  type Expression,
  type Term,
} from "./expression";
import { messages } from "./messages";
import { type PlanCell, type SheetPlan, type Validation } from "./plan";
import { type StyleName } from "./styles";

/** What A1 of an estimate says, by which a host finds it. */
export const estimateMark = "penstake estimate 1";

/** The kind of item that each line asks the prices for; panels, gates and loads also by their size. */
const itemOf: Record<string, PriceKind> = {
  panel: "panel",
  gate: "gate",
  truck: "haul",
  stakes: "stake",
  line: "line",
  paint: "paint",
};

const kindOfLine = (key: string) => itemOf[key.split("_")[0]];

/** The sheet of an estimate for a panel pen: the job's answers in its inputs, everything else as live formulas. */
export function estimatePlan(job: Job, name: string, prices: string): SheetPlan {
  const { sections, after } = laidOut();
  const places = placesOf(sections);
  const sheet: Sheet = {
    places: { ...places, ...besideCounts(places) },
    prices,
    lines: { from: sections[0].heading, to: sections.at(-1)!.heading - 1 },
  };
  const says: Record<string, Expression> = {
    ...penFormulas(sheet),
    ...sandFormulas(sheet),
    ...totalFormulas(sheet),
  };
  for (const section of sections)
    for (const { left } of section.rows)
      if (left?.kind === "line") Object.assign(says, formulasOfLine(sheet, left.key));
  for (const key of allOwnKeys) says[`${key}_amount`] = ownAmount(sheet, key);
  const body = sections.flatMap((section) => [
    ...headingCells(section),
    ...section.rows.flatMap((row) => rowCells(row, job, says)),
  ]);
  return {
    name,
    cells: [...headCells(places), ...body, ...cautionCells(after)],
    columns: widths.map((width, k) => ({ width, ...(hiddenColumns.includes(k) ? { hidden: true } : {}) })),
    hiddenRows: [headRows.names],
    heights: {
      [headRows.title]: 26,
      ...Object.fromEntries(sections.map(({ last }) => [last, 5])),
      ...Object.fromEntries(cautions.map((_, k) => [after + 1 + k, 26])),
    },
    frozenRows: headRows.headers + 1,
    print: {
      area: { top: headRows.title, left: columns.item, bottom: after + cautions.length, right: columns.note },
      landscape: false,
      pages: { wide: 1, tall: 1 },
      repeatRows: headRows.headers + 1,
      footer: messages.footer,
    },
    pictures: [],
  };
}

const widths = [14, 38, 11, 8, 13, 13, 6, 16, 3, 34, 13, 10, 15, 11, 10, 9, 9];
const hiddenColumns: number[] = [columns.key, columns.fewer, columns.more];

/** The hidden counts with one panel fewer and one more stand beside each panel's count. */
function besideCounts(places: Sheet["places"]): Sheet["places"] {
  const counts = Object.entries(places).filter(([key]) => key.startsWith("panel_") && key.endsWith("_count"));
  return Object.fromEntries(
    counts.flatMap(([key, place]) => [
      [key.replace("_count", "_fewer"), { ...place, column: columns.fewer }],
      [key.replace("_count", "_more"), { ...place, column: columns.more }],
    ]),
  );
}

function formulasOfLine(sheet: Sheet, key: string): Record<string, Expression> {
  const size = fieldExists(sheet, key) ? cell(sheet.places[key]) : undefined;
  if (key !== "sand") return lineFormulas(sheet, key, true, kindOfLine(key), size);
  const byYard = operate(cell(sheet.places.sand_unit), "=", "cu yd");
  return lineFormulas(sheet, key, false, when(byYard, "sand_yard", "sand_ton"));
}

const fieldExists = (sheet: Sheet, key: string) => sheet.places[key]?.column === columns.input;

const put = (row: number, column: number, says: Term, style: StyleName): PlanCell => ({
  row,
  column,
  says: expression(says),
  style,
});

function headCells(places: Sheet["places"]): PlanCell[] {
  const named = [...new Set(Object.values(places).map(({ column }) => column))];
  const names = Object.entries(columns).filter(([, column]) => named.includes(column));
  const joined = (key: string) =>
    when(operate(cell(places[key]), "=", ""), "", text(cell(places[key]), "   "));
  return [
    put(headRows.names, columns.key, estimateMark, "key"),
    ...names.map(([name, column]) => put(headRows.names, column, name, "key")),
    put(headRows.title, columns.item, messages.estimateTitle, "title"),
    {
      ...put(
        headRows.job,
        columns.item,
        text(joined("job_name"), joined("customer"), joined("site")),
        "subtitle",
      ),
      across: 7,
    },
    ...messages.headers.map((header, k) =>
      put(headRows.headers, columns.item + k, header, [1, 3, 4].includes(k) ? "headingRight" : "heading"),
    ),
    ...messages.inputHeaders.map((header, k) =>
      put(headRows.headers, columns.label + k, header, k === 0 || k === 2 ? "heading" : "headingRight"),
    ),
  ];
}

function headingCells({ title, section, heading, last }: LaidSection): PlanCell[] {
  const sum = call(
    "SUM",
    range({ row: heading + 1, column: columns.amount }, { row: last, column: columns.amount }),
  );
  const printed = [columns.quantity, columns.unit, columns.price, columns.taxed, columns.note];
  return [
    ...(section ? [put(heading, columns.key, `amount=sum_${section}`, "key")] : []),
    put(heading, columns.item, title, "section"),
    ...printed.map((column) => ({ row: heading, column, says: expression(""), style: "section" as const })),
    { row: heading, column: columns.amount, says: section ? sum : expression(""), style: "sectionSum" },
  ];
}

function rowCells(row: LaidRow, job: Job, says: Record<string, Expression>): PlanCell[] {
  const keys = Object.entries(keysOf(row));
  const cells = keys.length
    ? [put(row.row, columns.key, keys.map(([column, key]) => `${column}=${key}`).join(" "), "key")]
    : [];
  if (row.left) cells.push(...leftCells(row, says));
  if (row.right) cells.push(...inputCells(row.row, row.right, job));
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

function leftCells({ row, left }: LaidRow, says: Record<string, Expression>): PlanCell[] {
  const key = left!.key;
  switch (left!.kind) {
    case "figure": {
      const { label, unit, kind } = figureField(key);
      const total = key === "total";
      const figure = put(
        row,
        kind === "money" ? columns.amount : columns.quantity,
        says[key],
        total ? "total" : styleOfFigure[kind],
      );
      const shown = kind === "feet" ? [put(row, columns.price, feetInches(cell(figure)), "feetInches")] : [];
      return [
        put(row, columns.item, label.en, total ? "totalLabel" : "label"),
        figure,
        put(row, columns.unit, unit, "unit"),
        ...shown,
      ];
    }
    case "warning":
      return [{ ...put(row, columns.item, says[key], "warning"), across: 7 }];
    case "own":
      return ownCells(row, says[`${key}_amount`]);
    case "line": {
      const supplies: Record<string, string> = { sand: messages.sandItem, ...messages.suppliesItems };
      const item: Term = supplies[key] ?? says[`${key}_item`];
      const unit: Term = key === "sand" ? says.sand_unit_shown : priceKinds[kindOfLine(key)].unit;
      const used = (term: Term) =>
        when(operate(call("N", cell({ row, column: columns.count })), "=", 0), "", term);
      return [
        put(row, columns.item, item, "label"),
        put(row, columns.quantity, says[`${key}_quantity`], key === "sand" ? "figure" : "count"),
        put(row, columns.unit, used(unit), "unit"),
        put(row, columns.price, says[`${key}_price`], "money"),
        put(row, columns.amount, says[`${key}_amount`], "money"),
        put(row, columns.taxed, says[`${key}_taxed`], "mark"),
        put(row, columns.note, says[`${key}_note`], "note"),
        put(row, columns.count, says[`${key}_count`], key === "sand" ? "figure" : "count"),
        ...["fewer", "more"].flatMap((side) =>
          says[`${key}_${side}`] ? [put(row, columns[side as "fewer"], says[`${key}_${side}`], "count")] : [],
        ),
      ];
    }
  }
}

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
    put(row, columns.amount, amount, "money"),
    input(columns.taxed, "ownText", { kind: "list", options: ["yes", "no"], message: messages.yesOrNo }),
  ];
}

function inputCells(row: number, { field, use }: Right, job: Job): PlanCell[] {
  const cells: PlanCell[] = [];
  if (field) {
    const asked = fieldOf(field);
    cells.push(put(row, columns.label, asked.label.en, "label"), inputCell(row, columns.input, asked, job));
    cells.push(put(row, columns.inputUnit, asked.unit, "unit"));
    if (asked.kind === "length" && asked.unit === "ft")
      cells.push(
        put(row, columns.feetInches, feetInches(cell({ row, column: columns.input })), "feetInches"),
      );
  } else if (use) cells.push(put(row, columns.label, messages.suppliesItems[use as "stakes"], "label"));
  if (use) cells.push(inputCell(row, columns.use, fieldOf(`${use}_use`), job));
  return cells;
}

function inputCell(row: number, column: number, field: Field, job: Job): PlanCell {
  const isText = field.kind === "text" || field.kind === "choice";
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
export function validationOf({ kind, range: limits, options, unit }: Field): Validation | undefined {
  if (kind === "choice") return { kind: "list", options: [...options!], message: messages.oneOf(options!) };
  if (!limits) return undefined;
  const [least, most] = limits;
  const message =
    kind === "count"
      ? messages.wholeBetween(least, most)
      : unit
        ? messages.inUnit(unit, least, most)
        : messages.between(least, most);
  return { kind: "number", least, most, whole: kind === "count", message };
}

function cautionCells(after: number): PlanCell[] {
  return [
    put(after, columns.item, messages.cautions, "heading"),
    ...cautions.map((caution, k) => ({ ...put(after + 1 + k, columns.item, caution, "caution"), across: 7 })),
  ];
}
