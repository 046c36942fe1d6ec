import { fieldsOf } from "../estimate/fields";
import { COUNTED_WITHIN } from "../estimate/fixed-keys";
import { call, cell, minus, operate, type Expression } from "./expression";
import { blankUnless, type Sheet } from "./formula-terms";
import { messages } from "./messages";

/** Whether a pen of which panels are by other is no longer the one that these were counted on. */
function moved({ places }: Pick<Sheet, "places">): Expression[] {
  if (!("pin_circle_fixed" in places)) return [];
  const [now, then] = ["pin_circle", "pin_circle_fixed"].map((key) => cell(places[key]));
  return [call("AND", operate(then, ">", 0), operate(call("ABS", minus(now, then)), ">", COUNTED_WITHIN))];
}

/** Says that the sheet is out of date once an input is not what the numbers of the time of writing were worked out from. */
export function staleFormulas({ places, structure }: Sheet): Record<string, Expression> {
  const deciding = fieldsOf(structure).filter(({ key, decides }) => decides && `${key}_written` in places);
  const changed = deciding.map(({ key }) => operate(cell(places[key]), "<>", cell(places[`${key}_written`])));
  return {
    stale_warning: blankUnless(call("OR", ...changed, ...moved({ places })), messages.writtenOutOfDate),
  };
}
