import { base64 } from "../../src/hosts/base64";
import { HostError, type IncomingFile, type WorkbookHost } from "../../src/hosts/host";
import { address } from "../../src/sheets/address";
import { isEstimate, readEstimate } from "../../src/sheets/keyed";
import { fillTemplate, type Filled } from "../../src/sheets/template/filling";
import { templateCells } from "../../src/sheets/template/reading";
import { type Controller } from "../controller";
import { freeName } from "../names";
import { messages } from "./messages";

/** The names of other sheets that the braces of a sheet speak of. */
function spokenOf(panel: Controller): string[] {
  const { active, sheetNames } = panel.state.view!;
  const named = templateCells(active.formulas)
    .flatMap(({ pieces }) => pieces)
    .flatMap((piece) => (typeof piece === "string" || piece.estimate === undefined ? [] : [piece.estimate.toLowerCase()]));
  return sheetNames.filter((name) => named.includes(name.toLowerCase()));
} // prettier-ignore

/** What filling the selected sheet would come to now, from the estimate of the fields and those that it names. */
export async function filledNow(panel: Controller, host: WorkbookHost): Promise<Filled> {
  const { active } = panel.state.view!;
  const wanted = new Set([...spokenOf(panel), ...(panel.state.source ? [panel.state.source.name] : [])]);
  const estimates = (await host.read([...wanted])).filter(isEstimate).map(readEstimate);
  const present = estimates.find(({ name }) => name === panel.state.source?.name);
  return fillTemplate(active.formulas, present, estimates);
}

/** Makes a copy of the selected sheet in which every field is a formula that points at its estimate. The sheet itself stays. */
export async function fillCopy(panel: Controller, host: WorkbookHost): Promise<string> {
  panel.see(await host.look());
  const { active, sheetNames } = panel.state.view!;
  const { cells, unfilled } = await filledNow(panel, host);
  if (cells.length === 0) throw new HostError(messages.nothingToFill(active.name));
  const name = freeName(messages.copyOf(active.name), sheetNames);
  const left = await host.fillCopy(active.name, name, cells);
  panel.see(await host.look());
  const kept = new Set(unfilled.map(({ address }) => address)).size;
  const why = unfilled.map(({ sentence }) => sentence);
  return [messages.filled(name, cells.length), ...(kept > 0 ? [messages.unfilled(kept, why)] : []), ...left].join(" ");
} // prettier-ignore

/** Puts a field in braces into the selected cell, where that is empty. */
export async function insertField(panel: Controller, host: WorkbookHost, braces: string): Promise<string> {
  const view = await host.look();
  const { sheet, row, column } = view.selected;
  const held = view.active.name === sheet ? (view.active.formulas[row]?.[column] ?? null) : null;
  const where = address({ sheet, row, column });
  if (held !== null && held !== "") throw new HostError(messages.holdsSomething(where));
  await host.update(sheet, [{ row, column, value: braces }]);
  panel.see(await host.look());
  return messages.inserted(braces, where);
}

/** The largest file that is taken as a template, in MB: what Excel on the web takes in one request, in base64. */
const largest = 3.5;

/** Adds the sheets of an .xlsx file to the workbook as templates, and shows the first of them. */
export async function addFromFile(panel: Controller, host: WorkbookHost, file: File): Promise<string> {
  if (!/\.xlsx$/i.test(file.name)) throw new HostError(messages.notXlsx(file.name));
  if (file.size > largest * 2 ** 20) throw new HostError(messages.tooLarge(file.name, largest));
  const { names, lost } = await host.insertSheets(incoming(new Uint8Array(await file.arrayBuffer())));
  panel.see(await host.look());
  return [messages.added(names), ...lost].join(" ");
}

const incoming = (bytes: Uint8Array): IncomingFile => ({
  base64: () => base64(bytes),
  content: async () => (await import("../../src/hosts/xlsx/xlsx")).readXlsx(bytes),
});
