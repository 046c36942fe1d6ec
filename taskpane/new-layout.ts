import { type WorkbookView } from "../src/hosts/host";
import { isArena, isPosted } from "../src/estimate/pen";
import { arenaLayoutData } from "../src/sheets/arena-layout-data";
import { arenaLayoutPlan } from "../src/sheets/arena-layout-sheet";
import { layoutSheetPlan } from "../src/sheets/layout-sheet";
import { panelPenLayout } from "../src/sheets/panel-pen-layout";
import { postPenLayout } from "../src/sheets/post-pen-layout";
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
  const issue = { revision, date: dayText(today), estimate: { name: estimate, cells: sheet.cells } };
  const { pen, work } = made;
  if (isArena(pen)) return { name, plan: arenaLayoutPlan(arenaLayoutData(job, pen, work, issue), name) };
  const data = isPosted(pen) ? postPenLayout(job, pen, work!, issue) : panelPenLayout(job, pen, issue);
  return { name, plan: layoutSheetPlan(data, name) };
}
