import { HostError, type SelectedArea, type WorkbookHost } from "../../src/hosts/host";
import { address } from "../../src/sheets/address";
import { saying } from "../../src/sheets/expression";
import { liveFormula } from "../../src/sheets/formula";
import { freezing, said } from "../../src/sheets/freeze";
import { contentOfRead, type Replaced } from "../../src/sheets/replaced";
import { repairing } from "../../src/sheets/repair";
import { functionOf, isKnown } from "./functions";
import { messages } from "./messages";

/** The two commands for shared workbooks. */
export type Kind = "freeze" | "repair";

/** What a command will change, to be shown before it is done. */
export interface Change {
  kind: Kind;
  area: SelectedArea;
  /** The sheet or the selection, as a user reads it. */
  where: string;
  cells: Replaced[];
  /** Functions that formulas ask for and this add-in does not have. */
  unknown: string[];
}

/** Works out what a command will change on the active sheet or in the selection. Changes nothing. */
export async function lookAhead(host: WorkbookHost, kind: Kind, whole: boolean): Promise<Change> {
  const { active, sheetNames } = await host.look();
  const area = whole
    ? { sheet: active.name, top: 0, left: 0, bottom: Infinity, right: Infinity }
    : await host.selection();
  const where = whole ? `"${area.sheet}"` : named(area);
  return { kind, area, where, ...(await worked(host, kind, area, sheetNames)) };
}

/** A selection as a formula names it. */
function named({ sheet, top, left, bottom, right }: SelectedArea): string {
  const from = address({ sheet, row: top, column: left });
  return top === bottom && left === right ? from : `${from}:${address({ row: bottom, column: right })}`;
}

async function worked(host: WorkbookHost, kind: Kind, area: SelectedArea, sheets: string[]) {
  const content = contentOfRead(await host.read(sheets));
  if (kind === "repair") return repairing(content, area, isKnown);
  return { cells: freezing(content, area, functionOf), unknown: [] };
}

/** Does what was shown, in one step; refuses where the workbook would now change otherwise than it was shown. */
export async function carryOut(host: WorkbookHost, { kind, area, where, cells }: Change): Promise<string> {
  const { sheetNames } = await host.look();
  const now = await worked(host, kind, area, sheetNames);
  if (JSON.stringify(now.cells) !== JSON.stringify(cells)) throw new HostError(messages.changedMeanwhile);
  await host.rewrite(area.sheet, cells);
  return kind === "freeze" ? messages.frozen(cells.length, where) : messages.repaired(cells.length, where);
}

/** What a cell will say, as its sheet writes it. */
export function then({ says, style }: Replaced): string {
  if (style === "fixed") return messages.fixed;
  const content = saying(says);
  return content.kind === "constant" ? said(content.value) : liveFormula(content);
}
