import { checkedWorkbook } from "./workbook-file";
import { type PenFunction } from "../../sheets/evaluate";
import { type SheetPlan } from "../../sheets/plan";
import { contentOfPlan } from "../../sheets/workbook-content";
import { CellMessages } from "./cell-messages";
import { createGrid } from "./grid";
import { GridWorkbook } from "./grid-workbook";
import { BrowserHost } from "./host";
import { loadFunctionsBundle } from "./functions-bundle";
import { takeHold } from "./lock";
import { followRows } from "./print-set-up";
import { penExecutors, penHelp } from "./pen-executors";
import { penFunctions } from "./pen-functions";
import { openStorage, type Storage } from "./storage";

const key = "workbook";
const asideKey = "workbook set aside";

/** What the page can say about how its workbook came up. */
export type StartNote = "read only" | "not kept" | "set aside";

/** A workbook that has come up in the page. */
export interface Started {
  workbook: GridWorkbook;
  host: BrowserHost;
  notes: StartNote[];
  /** Settles when another tab lets go of the workbook; never where this tab holds it. */
  freed: Promise<void>;
  /** Writes the workbook to the browser's storage now. */
  keep(): Promise<void>;
  /** Replaces the workbook by a new one of the first sheets. */
  startNew(): Promise<void>;
  /** The worksheet functions, by name, as documents see them. */
  pen: (name: string) => PenFunction;
}

/**
 * Brings the workbook up in a page element: the one kept in this browser, else a new one of the first sheets given.
 * From then on it keeps itself, and `notKept` is called where the browser has no room. One tab holds it; in another
 * it can only be looked at.
 */
export async function startWorkbook(
  container: HTMLElement,
  firstSheets: () => SheetPlan[],
  notKept: () => void,
): Promise<Started> {
  const notes: StartNote[] = [];
  const [bundle, hold, storage] = await Promise.all([
    loadFunctionsBundle(),
    takeHold("penstake workbook"),
    openStorage().catch(() => undefined),
  ]);
  const messages = new CellMessages();
  const pen = penFunctions(bundle);
  const formula = {
    function: penExecutors(bundle.metadata, pen, messages),
    description: penHelp(bundle.metadata),
  };
  const grid = createGrid(container, formula);
  followRows(grid);
  const workbook = new GridWorkbook(grid, messages);
  if (!hold.held) notes.push("read only");
  if (!storage) notes.push("not kept");
  const startNew = () => workbook.load({ sheets: firstSheets().map((plan) => contentOfPlan(plan)) });
  if (!(await broughtBack(workbook, storage, notes))) await startNew();
  workbook.readOnly = !hold.held;

  const keep = async () => {
    if (hold.held) await storage?.write(key, workbook.save()).catch(notKept);
  };
  workbook.watch(() => void keep(), false, 400);
  document.addEventListener("visibilitychange", () => void (document.hidden && keep()));
  return { workbook, host: new BrowserHost(workbook), notes, freed: hold.freed, keep, startNew, pen };
}

/** Shows the kept workbook. One that cannot be shown is set aside and not lost. */
async function broughtBack(
  workbook: GridWorkbook,
  storage: Storage | undefined,
  notes: StartNote[],
): Promise<boolean> {
  const kept = await storage?.read(key);
  if (kept === undefined) return false;
  try {
    await workbook.restore(checkedWorkbook(kept));
    return true;
  } catch {
    await storage?.write(asideKey, kept);
    notes.push("set aside");
    return false;
  }
}
