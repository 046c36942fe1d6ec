import { calls } from "../../functions/calls";
import { type CellError, type Value } from "../../src/units/cell";

const valueError = (start: string) => ({ error: "#VALUE!", message: expect.stringMatching(`^${start}`) });
const noAnswer = (start: string) => ({ error: "#N/A", message: expect.stringMatching(`^${start}`) });
const refError: CellError = { error: "#REF!" };

describe("PANEL_MIX", () => {
  test("has the shape of its panels, with a blank beside a blank", () => {
    expect(calls.PANEL_MIX(72, [[12], [8], [null]], 10)).toEqual([[18], [0], [""]]);
    expect(calls.PANEL_MIX(72, [[12, "", 8]], 10)).toEqual([[18, "", 0]]);
    expect(calls.PANEL_MIX(72, 12, 10)).toBe(18);
  });

  test("takes a blank or 0 in stock as no limit and none as nothing on hand", () => {
    const withStock = (...stock: unknown[]) =>
      calls.PANEL_MIX(72, [[12, 8]], 10, 0, null, 0, "", [stock] as Value);
    expect(withStock(null, "")).toEqual([[18, 0]]);
    expect(withStock(0, 0)).toEqual([[18, 0]]);
    expect(withStock("None", null)).toEqual([[0, 27]]);
    expect(withStock(10, null)).toEqual([[10, 12]]);
    expect(withStock("some", null)).toEqual(valueError('stock: cannot read "some"'));
    expect(withStock(1.5, null)).toEqual(valueError("stock: must be"));
    expect(withStock(1)).toEqual(valueError("stock: must have as many cells as panels_ft, 2"));
  });

  test("takes prices all blank as left out, and a blank price as not offered", () => {
    const withPrices = (...prices: unknown[]) => calls.PANEL_MIX(72, [[12, 8]], 10, 0, [prices] as Value);
    expect(withPrices(null, "")).toEqual([[18, 0]]);
    expect(withPrices(null, 100)).toEqual([[0, 27]]);
    expect(withPrices(100)).toEqual(valueError("prices: must have as many cells as panels_ft, 2"));
  });

  test("says what is needed, what is not allowed, and what nothing answers", () => {
    expect(calls.PANEL_MIX(null, 12)).toEqual(valueError("diameter_ft: needed"));
    expect(calls.PANEL_MIX(72, [[null], [""]])).toEqual(valueError("panels_ft: needed"));
    expect(calls.PANEL_MIX([[60, 72]], 12)).toEqual(valueError("diameter_ft: one cell"));
    expect(calls.PANEL_MIX(72, 12, null, null, null, null, "smallest")).toEqual(
      valueError('fit: must be "nearest"'),
    );
    expect(calls.PANEL_MIX(72, [[12], [refError]] as Value)).toEqual(refError);
    expect(calls.PANEL_MIX(20, 12, [[30], [30], [30]])).toEqual(noAnswer("gates alone need"));
  });
});

describe("POSTS and BAY", () => {
  test("follow the shape of the sizes, a bad one with its own error", () => {
    expect(calls.POSTS([[66, "", "wide", 5]], 7, 5.5)).toEqual([
      [
        30,
        "",
        valueError("diameter_ft: cannot read"),
        valueError("the spacing must be at most the diameter, 5'"),
      ],
    ]);
    expect(calls.BAY(60, "30 ft")).toBeCloseTo(30, 12);
  });

  test("take the gate post in inches", () => {
    expect(calls.BAY(60, 8, 10, 6)).toBe(calls.BAY(60, 8, 10.5));
    expect(calls.BAY(60, 8, 10, "150 mm")).toBeCloseTo(calls.BAY(60, 8, 10 + 0.15 / 0.3048) as number, 12);
  });

  test("refuse more gates than bays, and gates longer than the circle", () => {
    expect(calls.POSTS(60, 60, [[10, 10, 10]])).toEqual(noAnswer("3 gates need a bay"));
    expect(calls.POSTS(20, 8, [[16, 16, 16, 16]])).toEqual(
      noAnswer("the gates are as long as the whole circle"),
    );
    expect(calls.POSTS(20, 8, 30)).toEqual(valueError("a gate with its posts"));
  });
});

describe("POST_LAYOUT and PANEL_LAYOUT", () => {
  const header = ["stake", "kind", "chord", "tie 1", "tie 2", "bearing", "east", "north"];

  test("lead with a header and hold one row a post or pin", () => {
    const posts = calls.POST_LAYOUT(66, 7, 5.5) as Value[][];
    expect(posts[0]).toEqual(header);
    expect(posts).toHaveLength(31);
    expect(posts.map((row) => row[1]).slice(1, 5)).toEqual(["gate post", "gate post", "post", "post"]);
    const pins = calls.PANEL_LAYOUT([[12], [10], [null]], [[8], [4], [null]], 10) as Value[][];
    expect(pins[0]).toEqual(header);
    expect(pins).toHaveLength(14);
    expect(pins.map((row) => row[1]).slice(1, 5)).toEqual(["gate pin", "gate pin", "pin", "pin"]);
  });

  test("turn with the bearing", () => {
    const [, first] = calls.POST_LAYOUT(60, 8, "", "", 90) as number[][];
    expect(first.slice(5)).toEqual([90, 30, expect.closeTo(0, 12)]);
    expect(calls.POST_LAYOUT(60, 8, "", "", 361)).toEqual(
      valueError("bearing_deg: must be from -360 to 360"),
    );
  });

  test("refuse a count beside a blank panel, and what closes nothing", () => {
    expect(calls.PANEL_LAYOUT([[12, ""]], [[9, 2]])).toEqual(
      valueError("counts: stands beside a blank panel"),
    );
    expect(calls.PANEL_LAYOUT(12, 2)).toEqual(noAnswer("These close nothing"));
    expect(calls.POST_LAYOUT(5000, 0.1)).toEqual(noAnswer("over 10000 stakes"));
  });
});

describe("OUT_OF_SQUARE", () => {
  test("is in inches, and positive when diagonal 1 is the longer", () => {
    // Derived: (d1^2 - d2^2) / (4 length), G12.
    expect(calls.OUT_OF_SQUARE(200, 100, 223.7, 223.5)).toBeCloseTo(1.3416, 4);
    expect(calls.OUT_OF_SQUARE("200'", "100'", "223' 6\"", 223.7)).toBeCloseTo(-1.3416, 4);
  });

  test("refuses a measure that is missing and measures that cannot belong together", () => {
    expect(calls.OUT_OF_SQUARE(200, 100, 223.7, "")).toEqual(valueError("diagonal_2_ft: needed"));
    expect(calls.OUT_OF_SQUARE(200, 100, 223.7, 200)).toEqual(noAnswer("These four measures cannot belong"));
  });
});
