import { messages } from "./messages";
import { unwritten, type PanelState } from "./state";

/** The one line that says which estimate is in the fields, and whether the sheet holds them. */
export function stateLine(state: PanelState): string {
  const { source } = state;
  if (!source) return messages.newJob;
  return unwritten(state).length > 0 ? messages.notWritten(source.name) : source.name;
}
