import { fabricPlaces, slotKeys } from "../estimate/fields";
import { baseLayer, footingLayer, type Layer } from "../estimate/layers";
import { messages as estimateMessages } from "../estimate/messages";
import { LIFT } from "../ground/lifts";
import { lineFormulas } from "./estimate-formulas";
import { call, expression, minus, number, operate, over, pen, text, times, when, type Expression } from "./expression"; // prettier-ignore
import { above, blankUnless, cellsOf, roundedUp, slotCount, sum, type Sheet } from "./formula-terms";
import { messages } from "./messages";

const trucks = slotKeys("truck");

/** The formulas of the base, of the footing and of the loads that bring both, by key. */
export function groundFormulas(sheet: Sheet): Record<string, Expression> {
  const { at } = cellsOf(sheet);
  const needs = [baseLayer, footingLayer].map(({ material, depth, overrun, settle }) => [
    `${material}_need`,
    pen("FILL", at("area"), at(depth), at(overrun), at(settle)),
  ]);
  return {
    ...Object.fromEntries(needs),
    ...haulFormulas(sheet, baseLayer),
    ...haulFormulas(sheet, footingLayer),
    ...baseFormulas(sheet),
    ...sandFormulas(sheet),
    ...Object.fromEntries(trucks.map((key) => [`${key}_item`, loadItem(sheet, key)])),
  };
}

/**
 * What comes of a layer for its need, by key: the loads of each truck, the user's own in their place where the sheet asks
 * for those; how much they deliver, also in the unit in which it is sold; and its priced line.
 */
export function haulFormulas(sheet: Sheet, layer: Layer): Record<string, Expression> {
  const { at, column, orDefault } = cellsOf(sheet);
  const { material, loadsOf, items } = layer;
  const listed = column("truck", "input");
  const [need, delivered] = [at(`${material}_need`), at(`${material}_delivered`)];
  const brought = trucks.map((key) => times(number(at(key)), number(at(`${loadsOf(key)}_count`))));
  const byYard = operate(at(layer.unit), "=", "cu yd");
  const counts = trucks.map((key, k) => {
    const use = `${loadsOf(key)}_use`;
    const own = use in sheet.places ? at(use) : expression("");
    const best = call("INDEX", pen("LOADS", need, listed, at("short")), k + 1);
    return [`${loadsOf(key)}_count`, slotCount(at(key), own, best)];
  });
  return {
    ...Object.fromEntries(counts),
    [`${material}_delivered`]: when(operate(call("COUNTIF", listed, ">0"), "=", 0), need, sum(brought)),
    [`${material}_count`]: when(byYard, delivered, times(delivered, orDefault(layer.tonsPerCy))),
    [`${material}_unit_shown`]: when(byYard, "cu yd", "ton"),
    ...lineFormulas(sheet, material, false, when(byYard, items["cu yd"], items.ton)),
  };
}

function baseFormulas(sheet: Sheet): Record<string, Expression> {
  const { at } = cellsOf(sheet);
  const depth = number(at("base_depth"));
  const [before, after] = messages.inLifts;
  const lifts = roundedUp(over(depth, LIFT));
  const laid = call("AND", operate(at("fabric"), "=", fabricPlaces[1]), above(depth, 0));
  return {
    base_depth_settled: settled(sheet, baseLayer, looseDepth(sheet, baseLayer)),
    base_item: text(messages.baseItem, when(above(depth, LIFT), text(before, lifts, after), "")),
    fabric_count: when(laid, at("area"), 0),
  };
}

function sandFormulas(sheet: Sheet): Record<string, Expression> {
  const { at } = cellsOf(sheet);
  const need = at("sand_need");
  const much = above(number(at("sand_over")), 10);
  const deep = above(call("MAX", number(at("depth")), number(at("depth_loose"))), 6);
  return {
    sand_over: blankUnless(above(need, 0), times(minus(over(at("sand_delivered"), need), 1), 100)),
    depth_loose: looseDepth(sheet, footingLayer),
    depth_settled: settled(sheet, footingLayer, at("depth_loose")),
    footing_warning: text(
      blankUnless(deep, estimateMessages.deepFooting),
      blankUnless(much, text(blankUnless(deep, " · "), estimateMessages.tooMuchSand)),
    ),
  };
}

/** The inches that what comes of a layer gives on the built area, loose. */
function looseDepth(sheet: Sheet, { material }: Layer): Expression {
  const { at } = cellsOf(sheet);
  return over(times(at(`${material}_delivered`), 324), at("area"));
}

/** What is left of a depth once the layer has settled, or was compacted. */
const settled = (sheet: Sheet, { settle }: Layer, loose: Expression) =>
  times(loose, minus(1, over(number(cellsOf(sheet).at(settle)), 100)));

/** What the loads of one truck are called, and how many of them bring base. */
function loadItem(sheet: Sheet, key: string): Expression {
  const { at } = cellsOf(sheet);
  const ofBase = number(at(`${baseLayer.loadsOf(key)}_count`));
  const parted = when(above(ofBase, 0), text(", ", ofBase, messages.ofBase), "");
  return blankUnless(above(number(at(key)), 0), text(messages.haulItem, at(key), " cu yd", parted));
}
