import { slotKeys } from "../estimate/fields";
import { messages as estimateMessages } from "../estimate/messages";
import { KNOWN_GATE } from "../fence/hung-gate";
import { call, minus, number, operate, over, pen, plus, text, times, when, type Expression, type Term } from "./expression"; // prettier-ignore
import { above, blankUnless, cellsOf, isAmong, isByOther, isNumber, type Sheet } from "./formula-terms";
import { messages } from "./messages";
import { isWord, square } from "./post-terms";

/** The gates of a sheet of posts, as its formulas name them. */
export function gateTerms(sheet: Sheet) {
  const { at, column } = cellsOf(sheet);
  const leaves = column("leaf", "input");
  const openings = column("leaf", "limit");
  return {
    openings,
    gates: call("COUNTIF", leaves, ">0"),
    widest: call("MAX", leaves),
    widestOpening: call("MAX", openings),
    /** For each place of the list, whether it has a gate, and the distance between the centers of its posts. */
    chords: slotKeys("leaf").map((key) => ({
      isGate: above(number(at(key)), 0),
      chord: plus(number(at(`${key}_opening`)), over(at("gate_post_in"), 12)),
    })),
  };
}

/** How many gates, and leaves in all, this estimate brings: those by other are counted as none. */
const counted = (sheet: Sheet, test: string) => call("COUNTIF", cellsOf(sheet).column("leaf", "count"), test);

/** The openings, leaves and hardware of the gates, and whether a post is light for the widest leaf, by key. */
export function hungGateFormulas(sheet: Sheet): Record<string, Expression> {
  const { at, column } = cellsOf(sheet);
  const [room, hinge] = [number(at("gate_room")), at("hinge_room_used")];
  const apart = isWord(at("gate_hardware"), "bought apart");
  const some = (key: string, words: string, count: Term, shown: Term = operate(count, ">", 0)) => ({
    [`${key}_count`]: blankUnless(shown, count),
    [`${key}_item`]: blankUnless(isNumber(at(`${key}_count`)), words),
  });
  const mine = counted(sheet, ">0");
  const all = call("SUM", column("leaf", "count"));
  return {
    hinge_room_used: when(isNumber(at("hinge_room")), call("MIN", at("hinge_room"), room), over(room, 2)),
    ...Object.assign({}, ...slotKeys("leaf").map((key, k) => leafFormulas(sheet, key, k + 1, room, hinge))),
    ...some("hinges", messages.hinges, all, call("AND", apart, operate(all, ">", 0))),
    ...some("latches", messages.latches, mine, call("AND", apart, operate(mine, ">", 0))),
    ...some("drop_rods", messages.dropRods, counted(sheet, "=2")),
    gate_warning: gateWarning(sheet),
  };
}

/** The opening of one gate, in the order of `gateOpening`, its leaves, and what they are called. */
function leafFormulas(sheet: Sheet, key: string, gate: number, room: Term, hinge: Term) {
  const { at } = cellsOf(sheet);
  const [isGate, theirs] = [above(number(at(key)), 0), isByOther(sheet, gate)];
  const leaves = when(isAmong(sheet, "gates_of_two", gate), 2, 1);
  const latch = minus(room, hinge);
  const onFace = minus(times(minus(leaves, 1), latch), times(2, number(at("gate_lap"))));
  const beside = when(isAmong(sheet, "gates_on_face", gate), onFace, plus(times(leaves, hinge), latch));
  const opening = pen("FEET_INCHES", at(`${key}_opening`));
  const words = text(
    messages.leafItem,
    at(key),
    messages.opening,
    opening,
    when(theirs, messages.byOther, ""),
  );
  return {
    [`${key}_opening`]: blankUnless(isGate, plus(times(leaves, at(key)), over(beside, 12))),
    [`${key}_count`]: blankUnless(isGate, when(theirs, 0, leaves)),
    [`${key}_item`]: blankUnless(isGate, words),
  };
}

function gateWarning(sheet: Sheet): Expression {
  const scale = operate(over(square(gateTerms(sheet).widest), KNOWN_GATE.leaf ** 2), "^", over(1, 3));
  const width = cellsOf(sheet).at("gate_post_in");
  const reaches = (nominal: number) => operate(width, ">=", times(nominal * (1 - 1e-9), scale));
  const { serves, marginal } = KNOWN_GATE.nominal;
  return when(
    reaches(serves),
    "",
    when(reaches(marginal), estimateMessages.gatePostMarginal, estimateMessages.gatePostLight),
  );
}
