import { Controller } from "../../taskpane/controller";
import { stateLine } from "../../taskpane/state-line";
import { FakeHost } from "./fake-host";

/** Until what the workbook told the panel of has been looked at. */
export const settled = () => new Promise((resolve) => setTimeout(resolve));

/** A panel at work in a workbook in memory. */
export async function opened(host = new FakeHost()) {
  const panel = new Controller(host, () => undefined);
  panel.start();
  await settled();
  const line = () => stateLine(panel.state);
  const cell = (key: string) => panel.state.source!.sheet.cells[key];
  const total = () => panel.figured.result!.figures.total;
  return { host, panel, line, cell, total };
}

/** The same with an estimate written. */
export async function written() {
  const all = await opened();
  all.panel.answer({ size: "72 ft", gate_1: "10'", truck_1: "16", truck_2: "10" });
  await all.panel.write();
  await settled();
  return all;
}

/** A copy of a sheet, as a user makes one. */
export function copy(host: FakeHost, from: string, name: string) {
  const cells = new Map([...host.sheet(from).cells].map(([place, cell]) => [place, { ...cell }]));
  host.sheets.push({ name, cells });
}
