import { type Job } from "../estimate/job";
import { cautions } from "../estimate/messages";
import { allOwnKeys } from "../estimate/own-lines";
import { type Cell } from "../units/cell";
import { address } from "./address";
import { kindOfLine, put, rowCells } from "./estimate-cells";
import {
  lineFormulas,
  ownAmount,
  penFormulas,
  sandFormulas,
  totalFormulas,
  type Sheet,
} from "./estimate-formulas";
import { columns, headRows, laidOut, placesOf, rowHeight, type LaidSection } from "./estimate-layout";
import { penToDraw, planPicture, planWarning } from "./estimate-plan-view";
import { blank, call, cell, expression, operate, range, text, when, type Expression } from "./expression";
import { messages } from "./messages";
import { type PlanCell, type SheetPlan } from "./plan";

/** What A1 of an estimate says, by which a host finds it. */
export const estimateMark = "penstake estimate 1";

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
  const drawnPen = penToDraw(job);
  says.plan_warning = drawnPen ? planWarning(sheet, drawnPen) : blank;
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
      ...Object.fromEntries(
        sections.flatMap(({ heading, last }) => rowsFrom(heading, last).map((row) => [row, rowHeight])),
      ),
      ...Object.fromEntries(sections.map(({ last }) => [last, 4])),
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
    pictures: drawnPen ? [planPicture(drawnPen, sections[0].heading + 1)] : [],
  };
}

/** The plan of an estimate with these values typed into its inputs, by key; other inputs stay as they are. */
export function typedInto(plan: SheetPlan, values: Record<string, Cell>): SheetPlan {
  const places = placesOf(laidOut().sections);
  const typed = new Map(Object.entries(values).map(([key, value]) => [address(places[key]), value]));
  const cells = plan.cells.map((cell): PlanCell => {
    const value = cell.input ? typed.get(address(cell)) : undefined;
    return value === undefined ? cell : { ...cell, says: { kind: "constant", value } };
  });
  return { ...plan, cells };
}

const rowsFrom = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, k) => first + k);

const widths = [14, 29, 10, 8, 12, 12, 6, 12, 2, 27, 13, 10, 16, 11, 10, 9, 9];
const [left, right, center] = ["heading", "headingRight", "headingCenter"] as const;
/** How the headers stand: as the cells under them. */
const headerStyles = [left, right, center, right, right, center, left];
const inputHeaderStyles = [left, right, center, right, right, right];
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
    ...messages.headers.map((header, k) => put(headRows.headers, columns.item + k, header, headerStyles[k])),
    ...messages.inputHeaders.map((header, k) =>
      put(headRows.headers, columns.label + k, header, inputHeaderStyles[k]),
    ),
  ];
}

function headingCells({ title, section, heading, last }: LaidSection): PlanCell[] {
  const sum = call(
    "SUM",
    range({ row: heading + 1, column: columns.amount }, { row: last, column: columns.amount }),
  );
  const printed = [columns.quantity, columns.unit, columns.taxed, columns.note];
  return [
    ...(section ? [put(heading, columns.key, `amount=sum_${section}`, "key")] : []),
    put(heading, columns.item, title, "section"),
    ...printed.map((column) => ({ row: heading, column, says: blank, style: "section" as const })),
    {
      row: heading,
      column: columns.price,
      says: heading === headRows.headers + 1 ? expression(messages.feetAndInches) : blank,
      style: "sectionRight",
    },
    { row: heading, column: columns.amount, says: section ? sum : blank, style: "sectionSum" },
  ];
}

function cautionCells(after: number): PlanCell[] {
  return [
    { ...put(after, columns.item, messages.cautions, "heading"), across: 7 },
    ...cautions.map((caution, k) => ({ ...put(after + 1 + k, columns.item, caution, "caution"), across: 7 })),
  ];
}
