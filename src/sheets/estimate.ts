import { fields } from "../estimate/fields";
import { structureOf, type Job } from "../estimate/job";
import { cautionsOf } from "../estimate/messages";
import { lineSectionsOf, ownLineKeys } from "../estimate/own-lines";
import { belongs, postFences, type Structure } from "../estimate/structures";
import { isWhole } from "../estimate/takeoff-line";
import { type Cell } from "../units/cell";
import { address } from "./address";
import { put, rowCells } from "./estimate-cells";
import { kindOfLine } from "./line-items";
import { arenaLine, panelArenaFormulas, postArenaFormulas } from "./arena-formulas";
import { circleLine, lineAmount, lineFormulas, suppliesFormulas } from "./estimate-formulas";
import { fixedFormulas } from "./fixed-formulas";
import { besideCounts, headersOf, hiddenIn, widthsOf } from "./estimate-columns";
import {
  columns,
  headRows,
  laidOut,
  placesOf,
  rowHeight,
  type ColumnName,
  type LaidSection,
  estimateMark,
} from "./estimate-layout";
import { penToDraw, planPicture, planWarning } from "./estimate-plan-view";
import { blank, call, cell, expression, operate, range, text, when, type Expression, type Term } from "./expression"; // prettier-ignore
import { cellsOf, type Sheet } from "./formula-terms";
import { keyPairs } from "./keyed-cells";
import { groundFormulas } from "./layer-formulas";
import { messages } from "./messages";
import { panelFormulas } from "./panel-formulas";
import { postFormulas } from "./post-formulas";
import { postItems } from "./post-items";
import { newPricesLayout, type PricesLayout } from "./prices-layout";
import { siteNotes } from "./site-notes";
import { staleFormulas } from "./stale-formulas";
import { type PlanCell, type SheetPlan } from "./plan";
import { totalFormulas } from "./total-formulas";
import { workFormulas } from "./work-formulas";

/** The sheet of an estimate of a job's structure: the job's answers in its inputs, everything else as live formulas. */
export function estimatePlan(job: Job, name: string, prices: string | PricesLayout): SheetPlan {
  const structure = structureOf(job);
  const { sections, after } = laidOut(structure);
  const places = placesOf(sections);
  const sheet: Sheet = {
    places: { ...places, ...besideCounts(places) },
    prices: typeof prices === "string" ? newPricesLayout(prices) : prices,
    structure,
    lines: { from: sections[0].heading, to: sections.at(-1)!.heading - 1 },
  };
  const says: Record<string, Expression> = {
    ...fenceFormulas(sheet, job),
    ...groundFormulas(sheet),
    ...workFormulas(sheet, sections),
    ...totalFormulas(sheet),
  };
  for (const section of sections)
    for (const { left } of section.rows)
      if (left?.kind === "line") Object.assign(says, formulasOfLine(sheet, left.key));
  const drawnPen = penToDraw(job);
  says.plan_warning = drawnPen ? planWarning(sheet, drawnPen) : blank;
  const found = drawnPen ? siteNotes(sheet, job, drawnPen, after + 1) : [];
  const cautions = [...found, ...cautionsOf(structure)];
  for (const key of lineSectionsOf(structure).flatMap(ownLineKeys))
    says[`${key}_amount`] = lineAmount(sheet, key);
  const body = sections.flatMap((section) => [
    ...headingCells(section),
    ...section.rows.flatMap((row) => rowCells(row, job, says)),
  ]);
  return {
    name,
    cells: [...headCells(places, structure), ...body, ...cautionCells(cautions, after)],
    columns: widthsOf(structure).map((width, k) => ({
      width,
      ...(hiddenIn(structure).includes(k) ? { hidden: true } : {}),
    })),
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
      pages: { wide: 1, tall: 2 },
      repeatRows: headRows.headers + 1,
      footer: messages.footer,
    },
    pictures: drawnPen ? [planPicture(job, drawnPen, sections[0].heading + 1)] : [],
  };
}

/**
 * The plan of an estimate with these values typed into its inputs, by key; other inputs stay as they are, and what its
 * structure has no cell for is passed over.
 */
export function typedInto(plan: SheetPlan, values: Record<string, Cell>): SheetPlan {
  const places = new Map(plan.cells.flatMap(keysIn));
  const here = Object.entries(values).filter(([key]) => places.has(key));
  const typed = new Map(here.map(([key, value]) => [places.get(key)!, value]));
  const cells = plan.cells.map((cell): PlanCell => {
    const value = cell.input ? typed.get(address(cell)) : undefined;
    return value === undefined ? cell : { ...cell, says: { kind: "constant", value } };
  });
  return { ...plan, cells };
}

const rowsFrom = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, k) => first + k);

/** The keys that a key cell gives its row, each with the address of its cell. */
function keysIn({ row, column, says }: PlanCell): [key: string, address: string][] {
  if (column !== columns.key || row === headRows.names || says.kind !== "constant") return [];
  return keyPairs(String(says.value)).map(([name, key]) => [
    key,
    address({ row, column: columns[name as ColumnName] }),
  ]);
}

/** The formulas of the pen as built, of its supplies, and of what it cannot follow by itself. */
function fenceFormulas(sheet: Sheet, job: Job): Record<string, Expression> {
  const { at } = cellsOf(sheet);
  const ofStructure: Record<Structure, () => Record<string, Expression>> = {
    "panel pen": () => ({
      ...panelFormulas(sheet),
      ...suppliesFormulas(sheet, circleLine(at("pin_circle"))),
    }),
    "post pen": () => ({ ...postFormulas(sheet), ...suppliesFormulas(sheet, circleLine(at("post_circle"))) }),
    "panel arena": () => ({ ...panelArenaFormulas(sheet), ...suppliesFormulas(sheet, arenaLine(sheet)) }),
    "post arena": () => ({ ...postArenaFormulas(sheet), ...suppliesFormulas(sheet, arenaLine(sheet)) }),
  };
  return {
    ...ofStructure[sheet.structure](),
    ...fixedFormulas(sheet.structure, job),
    ...staleFormulas(sheet),
  };
}

function formulasOfLine(sheet: Sheet, key: string): Record<string, Expression> {
  const item = isOfPosts(sheet.structure) ? postItems(sheet)[key] : undefined;
  if (item) return lineFormulas(sheet, key, item.whole, item.item, item.size);
  const kind = kindOfLine(key);
  if (!kind) return {};
  const size = isSlot(key) ? cell(sheet.places[key]) : undefined;
  return lineFormulas(sheet, key, isWhole(kind), kind, size);
}

const isOfPosts = (structure: Structure) => belongs({ structures: postFences }, structure);

const isSlot = (key: string) => fields.some((field) => field.key === key && field.slot !== undefined);

function headCells(places: Sheet["places"], structure: Structure): PlanCell[] {
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
    ...headersOf(structure).map(({ column, header, style }) => put(headRows.headers, column, header, style)),
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

function cautionCells(cautions: readonly Term[], after: number): PlanCell[] {
  return [
    { ...put(after, columns.item, messages.cautions, "heading"), across: 7 },
    ...cautions.map((caution, k) => ({ ...put(after + 1 + k, columns.item, caution, "caution"), across: 7 })),
  ];
}
