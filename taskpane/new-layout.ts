import { type WorkbookView } from "../src/hosts/host";
import { layoutSheetPlan } from "../src/sheets/layout-sheet";
import { panelPenLayout } from "../src/sheets/panel-pen-layout";
import { type SheetPlan } from "../src/sheets/plan";
import { dayText } from "./day";
import { messages } from "./messages";
import { freeName } from "./names";
import { type Result } from "./result";
import { type Source } from "./state";

/**
 * The layout sheet of a written estimate under a free name. Its revision is the number behind that name: the first one
 * of a workbook is revision 1.
 */
export function newLayout(
  { sheetNames }: WorkbookView,
  { name: estimate, sheet, job }: Source,
  { made }: Result,
  today = new Date(),
): { name: string; plan: SheetPlan } {
  const name = freeName(messages.layoutSheet, sheetNames);
  const revision = Number(/\d+$/.exec(name)?.[0] ?? 1);
  const data = panelPenLayout(job, made.pen, {
    revision,
    date: dayText(today),
    estimate: { name: estimate, cells: sheet.cells },
  });
  return { name, plan: layoutSheetPlan(data, name) };
}
