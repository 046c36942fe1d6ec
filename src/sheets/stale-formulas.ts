import { fieldsOf } from "../estimate/fields";
import { call, cell, operate, type Expression } from "./expression";
import { blankUnless, type Sheet } from "./formula-terms";
import { messages } from "./messages";

/** Says that the sheet is out of date once an input is not what the numbers of the time of writing were worked out from. */
export function staleFormulas({ places, structure }: Sheet): Record<string, Expression> {
  const deciding = fieldsOf(structure).filter(({ key, decides }) => decides && `${key}_written` in places);
  if (deciding.length === 0) return {};
  const changed = deciding.map(({ key }) => operate(cell(places[key]), "<>", cell(places[`${key}_written`])));
  return { stale_warning: blankUnless(call("OR", ...changed), messages.writtenOutOfDate) };
}
