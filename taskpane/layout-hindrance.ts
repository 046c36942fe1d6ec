import { isOutOfDate, isPlainCopy } from "../src/sheets/keyed";
import { messages } from "./messages";
import { type Figured } from "./result";
import { unwritten, type PanelState } from "./state";

/** Why no layout sheet can be written of what is in the fields, in a sentence; empty where one can. */
export function layoutHindrance(state: PanelState, { result, old, refusal, own }: Figured): string {
  const { source } = state;
  if (!source) return messages.layoutNeedsEstimate;
  if (unwritten(state).length > 0 || isOutOfDate(source.sheet))
    return messages.layoutNeedsUpdate(source.name);
  if (old || !result) return messages.layoutNeedsAnswer(refusal);
  if (isPlainCopy(source.sheet, source.content.formulas)) return messages.isPlain(source.name);
  const typed = own.filter(({ key }) => /^panel_\d+_count$/.test(key)).map(({ address }) => address);
  return typed.length > 0 ? messages.layoutCountsTyped(typed.join(", ")) : "";
}
