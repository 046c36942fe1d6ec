import { estimate } from "../../src/estimate/estimate";
import { newJob, type Job } from "../../src/estimate/job";
import { examplePrices } from "../../src/estimate/prices";
import { arenaLayout } from "../../src/fence/arena-layout";
import { panelArena } from "../../src/fence/panel-arena";
import { panelLayout } from "../../src/fence/panel-layout";
import { panelMix } from "../../src/fence/panel-mix";
import { panelCount } from "../../src/fence/panels";
import { postLayout } from "../../src/fence/post-layout";
import { postCircle } from "../../src/fence/posts";
import { circumcircle } from "../../src/geometry/cyclic-polygon";
import { roundedRectangleArea } from "../../src/geometry/rounded-rectangle";
import { Refusal } from "../../src/units/refusal";
import { calls } from "../../functions/calls";

const posts = { diameter: 60, spacing: 8, gates: [], gatePost: 0 };
const mix = { diameter: 60, panels: [{ length: 12 }], gates: [], pinGap: 0, tolerance: 1, fit: "nearest", priced: false } as const; // prettier-ignore
const arena = { length: 200, width: 100, cornerRadius: 0, spacing: 8, gates: [], gatePost: 0 };
const job = (changes: Job) => () => estimate({ ...newJob(), ...changes }, examplePrices);
const endsAllGate = [{ side: "left" as const, opening: 20 }, { side: "far" as const, opening: 4 }, { side: "near" as const, opening: 4 }]; // prettier-ignore
const nearGates = [60, 60].map((opening) => ({ side: "near" as const, opening }));

const answered = (error: string, message: string) => ({ error, message });

const around = "the gates are as long as the whole circle of 60' or longer: nothing is left for the fence";
const gatesAlone = "gates alone need 34' 7 11/16\" across the pins: that is the smallest pen that closes";
const spacing = "the spacing must be at most the diameter, 60'";
const radius = "corner_radius_ft: at most half the shorter side, 50'";
const nothing =
  "These close nothing: it takes three or more panels and gates, and the longest must be shorter than all the others together.";

/** Who is asked, what, and the whole sentence that refuses it; of worksheet functions the error's code, too. */
type Row = [who: string, ask: () => unknown, refusal: string | { error: string; message: string }];

const rows: Record<string, Row[]> = {
  "gates longer than the fence": [
    ["postCircle", () => postCircle({ ...posts, gates: [59, 59, 59] }), around],
    ["postLayout", () => postLayout({ ...posts, gates: [59, 59, 59] }, 0), around],
    ["POSTS", () => calls.POSTS(60, 8, [[59], [59], [59]]), answered("#N/A", around)],
    ["panelCount", () => panelCount({ diameter: 20, panel: 12, gates: [30, 30, 30] }), `${gatesAlone}, without a panel`],
    ["panelMix", () => panelMix({ ...mix, diameter: 20, gates: [30, 30, 30] }), gatesAlone],
    ["PANEL_MIX", () => calls.PANEL_MIX(20, [[12]], [[30], [30], [30]]), answered("#N/A", gatesAlone)],
    ["panelArena", () => panelArena({ length: 200, width: 100, panel: 12, pinGap: 0, gates: nearGates }, 0), "the gates on the near side are 120' together, longer than the side of 100'"],
    ["arenaLayout", () => arenaLayout({ ...arena, gates: [{ side: "near", opening: 101 }] }, 0), "gates on the near side: one is 101' with its posts, and the straight is 100'"],
    ["a job of posts", job({ structure: "post pen", size: 20, leaf_1: 16, leaf_2: 16, leaf_3: 16, leaf_4: 16 }), around.replace("60'", "20'")],
    ["a job of panels", job({ structure: "panel pen", size: 9, gate_1: 40 }), gatesAlone.replace("34' 7 11/16", "40' 11 1/4")],
  ],
  "one gate longer than the diameter": [
    ["postCircle", () => postCircle({ ...posts, gates: [60.5] }), "a gate with its posts must be no longer than the diameter, 60'"],
    ["BAY", () => calls.BAY(60, 8, 60.5), answered("#VALUE!", "a gate with its posts must be no longer than the diameter, 60'")],
    ["a job of posts", job({ structure: "post pen", size: 10, spacing: 6, leaf_1: 12 }), "a gate with its posts must be no longer than the diameter, 10'"],
  ],
  "a spacing longer than the diameter": [
    ["postCircle", () => postCircle({ ...posts, spacing: 60.5 }), spacing],
    ["postLayout", () => postLayout({ ...posts, spacing: 60.5 }, 0), spacing],
    ["BAY", () => calls.BAY(60, 60.5), answered("#VALUE!", spacing)],
    ["a job of posts", job({ structure: "post pen", size: 10, spacing: 16, leaf_1: null }), spacing.replace("60'", "10'")],
  ],
  "a corner radius over half the width": [
    ["roundedRectangleArea", () => roundedRectangleArea({ ...arena, cornerRadius: 50.5 }), radius],
    ["arenaLayout", () => arenaLayout({ ...arena, cornerRadius: 50.5 }, 0), radius],
    ["ARENA_AREA", () => calls.ARENA_AREA(200, 100, 50.5), answered("#VALUE!", radius)],
    ["a job of an arena", job({ structure: "post arena", arena_length: 200, arena_width: 100, corner_radius: 51 }), "the corner radius is at most half the shorter side, 50 ft"],
  ],
  "nothing that closes": [
    ["circumcircle", () => circumcircle([{ length: 10, count: 2 }]), nothing],
    ["panelLayout", () => panelLayout({ panels: [{ length: 10, count: 2 }], gates: [20], pinGap: 0 }, 0), nothing],
    ["PIN_CIRCLE", () => calls.PIN_CIRCLE([[12]], [[2]]), answered("#N/A", nothing)],
    ["PANEL_LAYOUT", () => calls.PANEL_LAYOUT([[12]], [[2]]), answered("#N/A", nothing)],
    ["panelMix", () => panelMix({ ...mix, panels: [{ length: 12, stock: 2 }] }), "these panels and gates close no pen around its center: it takes three or more, none too long for the rest"],
    ["panelArena", () => panelArena({ length: 20, width: 4, panel: 50, pinGap: 0, gates: endsAllGate }, 0), nothing],
  ],
}; // prettier-ignore

describe.each(Object.entries(rows))("%s", (_what, some) => {
  test.each(some)("is refused by %s in its own sentence", (_who, ask, refusal) => {
    if (typeof refusal !== "string") return expect(ask()).toEqual(refusal);
    expect(ask).toThrow(Refusal);
    expect(said(ask)).toBe(refusal);
  });
});

test("every kind of bad input is tried on functions and jobs", () => {
  expect(Object.values(rows).map((some) => some.length)).toEqual([10, 3, 4, 4, 6]);
});

function said(ask: () => unknown): string {
  try {
    return `answered ${String(ask())}`;
  } catch (refusal) {
    return (refusal as Error).message;
  }
}
