import { slotKeys } from "../estimate/fields";
import {
  call,
  minus,
  number,
  operate,
  over,
  pen,
  plus,
  text,
  times,
  when,
  type Expression,
} from "./expression";
import { above, blankUnless, cellsOf, slotCount, sum, type Sheet } from "./formula-terms";
import { stakesCount } from "./estimate-formulas";
import { messages } from "./messages";

/** The formulas of a pen of panels as built, by key. */
export function panelFormulas(sheet: Sheet): Record<string, Expression> {
  const { at, column } = cellsOf(sheet);
  const lengths = column("panel", "input");
  const counts = column("panel", "count");
  const gates = column("gate", "input");
  const gap = at("pin_gap");
  const fit = when(
    operate(at("size_means"), "=", "inside clear"),
    "at least",
    when(operate(at("size_means"), "=", "outside"), "at most", "nearest"),
  );
  const mix = pen("PANEL_MIX", at("size"), lengths, gates, gap, undefined, undefined, fit);
  const gateCount = call("COUNTIF", gates, ">0");
  const pinCircle = (of: Expression) => pen("PIN_CIRCLE", lengths, of, gates, gap);
  const found: Record<string, Expression> = {
    pin_circle: pinCircle(counts),
    inside_clear: pen("INSIDE_CLEAR", lengths, counts, gates, gap),
    distance_around: plus(
      sum(slotKeys("panel").map((key) => times(number(at(key)), number(at(`${key}_count`))))),
      call("SUM", gates),
      times(over(number(gap), 12), plus(call("SUM", counts), gateCount)),
    ),
    area: pen("INSIDE_AREA", lengths, counts, gates, gap),
    one_under: call("IFERROR", pinCircle(column("panel", "fewer")), ""),
    one_over: call("IFERROR", pinCircle(column("panel", "more")), ""),
  };
  slotKeys("panel").forEach((key, k) => {
    const count = at(`${key}_count`);
    found[`${key}_count`] = slotCount(at(key), at(`${key}_use`), call("INDEX", mix, k + 1));
    found[`${key}_fewer`] = k === 0 ? minus(number(count), 1) : count;
    found[`${key}_more`] = k === 0 ? plus(number(count), 1) : count;
    found[`${key}_item`] = blankUnless(above(number(at(key)), 0), text(messages.panelItem, at(key), " ft"));
  });
  found.stakes_count = stakesCount(sheet, plus(call("SUM", counts), gateCount));
  return { ...found, ...gateFormulas(sheet) };
}

/** The lines of gates in their frames, by key. */
export function gateFormulas(sheet: Sheet): Record<string, Expression> {
  const { at } = cellsOf(sheet);
  return Object.fromEntries(
    slotKeys("gate").flatMap((key) => [
      [`${key}_count`, blankUnless(above(number(at(key)), 0), 1)],
      [`${key}_item`, blankUnless(above(number(at(key)), 0), text(messages.gateItem, at(key), " ft"))],
    ]),
  );
}
