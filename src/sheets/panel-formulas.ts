import { beyondStock, slotKeys } from "../estimate/fields";
import { riderHeight, truckWidth } from "../estimate/gate-cautions";
import { messages as estimateMessages } from "../estimate/messages";
import {
  call,
  minus,
  number,
  operate,
  over,
  pen,
  plus,
  range,
  text,
  times,
  when,
  type Expression,
  type Term,
} from "./expression";
import { above, blankUnless, cellsOf, isByOther, slotCount, sum, type Sheet } from "./formula-terms";
import { stakesCount } from "./estimate-formulas";
import { type Place } from "./address";
import { onFixedRows } from "./moved";
import { messages } from "./messages";

/** The formulas of a pen of panels as built, by key. */
export function panelFormulas(sheet: Sheet): Record<string, Expression> {
  const { at, column } = cellsOf(sheet);
  const lengths = column("panel", "input");
  const counts = column("panel", "count");
  const gates = column("gate", "input");
  const gap = at("pin_gap");
  const means = (word: string, then: Term, otherwise: Term) =>
    when(operate(at("size_means"), "=", word), then, otherwise);
  const fit = means("inside clear", "at least", means("outside", "at most", "nearest"));
  const thickness = over(number(at("panel_thickness")), 12);
  const size = plus(at("size"), means("inside clear", thickness, means("outside", minus(0, thickness), 0)));
  const stock = column("panel", "limit");
  // On fixed rows, and each length by its place in the list, so that rows are like one another.
  const mix = onFixedRows(pen("PANEL_MIX", size, lengths, gates, gap, undefined, undefined, fit, stock));
  const first: Place = { ...sheet.places.panel_1, fixedRow: true };
  const gateCount = call("COUNTIF", gates, ">0");
  const pinCircle = (of: Expression) => pen("PIN_CIRCLE", lengths, of, gates, gap);
  const found: Record<string, Expression> = {
    pin_circle: pinCircle(counts),
    inside_clear: call("MAX", 0, minus(pen("INSIDE_CLEAR", lengths, counts, gates, gap), thickness)),
    outside_size: plus(at("pin_circle"), thickness),
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
    found[`${key}_count`] = slotCount(
      at(key),
      at(`${key}_use`),
      call("INDEX", mix, call("ROWS", range(first, sheet.places[key]))),
    );
    found[`${key}_fewer`] = k === 0 ? minus(number(count), 1) : count;
    found[`${key}_more`] = k === 0 ? plus(number(count), 1) : count;
    const hand = number(at(`${key}_stock`));
    const others = at(`${key}_fixed`);
    const needed = minus(number(count), others);
    found[`${key}_left`] = blankUnless(above(hand, 0), call("MAX", 0, minus(hand, needed)));
    found[`${key}_limit`] = when(
      operate(at("beyond_stock"), "=", beyondStock[1]),
      when(above(hand, 0), hand, "none"),
      "",
    );
    const has = text(", ", call("MIN", hand, needed), messages.ofThem, needed, messages.onHand);
    const theirs = when(above(others, 0), text(", ", others, messages.areByOther), "");
    const item = text(messages.panelItem, at(key), " ft", when(above(hand, 0), has, ""), theirs);
    found[`${key}_item`] = blankUnless(above(number(at(key)), 0), item);
  });
  const less = onFixedRows(over(number(at("frame_less_opening")), 12));
  const bow = number(at("bow_height"));
  const isLow = call("AND", above(bow, 0), operate(bow, "<", riderHeight));
  const noTruck = call(
    "AND",
    above(gateCount, 0),
    above(plus(at("base_delivered"), at("sand_delivered")), 0),
    operate(minus(call("MAX", gates), less), "<", truckWidth),
  );
  found.gate_warning = text(
    blankUnless(isLow, estimateMessages.bowLow),
    blankUnless(noTruck, text(blankUnless(isLow, " · "), estimateMessages.noTruck)),
  );
  found.stakes_count = stakesCount(sheet, plus(call("SUM", counts), gateCount));
  return { ...found, ...gateFormulas(sheet, less) };
}

/** The lines of gates in their frames, by key; with what a frame is wider than its clear opening, ft, that too. */
export function gateFormulas(sheet: Sheet, less?: Expression): Record<string, Expression> {
  const { at } = cellsOf(sheet);
  const passes = (key: string) =>
    less ? text(messages.opening, pen("FEET_INCHES", call("MAX", 0, minus(number(at(key)), less)))) : " ft";
  return Object.fromEntries(
    slotKeys("gate").flatMap((key, k) => [
      [`${key}_count`, blankUnless(above(number(at(key)), 0), when(isByOther(sheet, k + 1), 0, 1))],
      [
        `${key}_item`,
        blankUnless(
          above(number(at(key)), 0),
          text(messages.gateItem, at(key), passes(key), when(isByOther(sheet, k + 1), messages.byOther, "")),
        ),
      ],
    ]),
  );
}
