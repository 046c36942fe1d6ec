import fc from "fast-check";
import { calls } from "../../functions/calls";
import { type CellError, type Value } from "../../src/units/cell";

const message = (value: Value) => (value as CellError).message;
const valueError = (start: string) => ({ error: "#VALUE!", message: expect.stringMatching(`^${start}`) });
const noAnswer = { error: "#N/A", message: expect.any(String) };

describe("A blank", () => {
  test.each([null, undefined, "", "  ", 0])("%p as an optional argument takes its default", (blank) => {
    expect(calls.ARENA_AREA(190, 90, blank)).toBe(17100);
    expect(calls.TONS(10, blank)).toBe(13.5);
    expect(calls.PANELS(72, 12, 10, blank, blank)).toBe(18);
    expect(calls.FEET_INCHES(30.375, blank)).toBe(`30' 4 1/2"`);
  });

  test("is also a text that says 0", () => {
    expect(calls.ARENA_AREA(190, 90, "0 ft")).toBe(17100);
    expect(calls.TONS(10, "0")).toBe(13.5);
    expect(calls.FEET([["0'", '0"', "0,0 m"]])).toEqual([["", "", ""]]);
  });

  test.each([null, undefined, "", 0])("%p in a shape argument gives a blank text", (blank) => {
    for (const id of ["CIRCUMFERENCE", "AREA", "FEET", "FEET_INCHES"]) expect(calls[id](blank)).toBe("");
    expect(calls.PANELS(blank, 12)).toBe("");
    expect(calls.FOOTING(blank, 3)).toBe("");
    expect(calls.FILL(blank, 3)).toBe("");
  });

  test.each([null, undefined, "", 0])("%p as a volume or a depth is 0", (blank) => {
    expect(calls.TONS(blank)).toBe(0);
    expect(calls.TRUCK_YARDS(blank, 10)).toBe(0);
    expect(calls.DEPTH(blank, 4000)).toBe(0);
    expect(calls.FOOTING(72, blank)).toBe(0);
    expect(calls.FILL(5200, blank)).toBe(0);
    expect(calls.LOADS(blank, [[16], [10]])).toEqual([[0], [0]]);
  });

  test.each([null, undefined, "", 0])(
    "%p as a required argument is refused, and what is allowed said",
    (blank) => {
      expect(calls.ARENA_AREA(190, blank)).toEqual(valueError("width_ft: needed, over 0 to 5000 ft"));
      expect(calls.DIAGONAL(blank, 90)).toEqual(valueError("length_ft: needed"));
      expect(calls.PANELS(72, blank)).toEqual(valueError("panel_ft: needed"));
      expect(calls.DEPTH(36, blank)).toEqual(valueError("area_sqft: needed"));
      expect(calls.TRUCK_YARDS(16, blank)).toEqual(valueError("payload_tons: needed"));
      expect(calls.LOADS(36, blank)).toEqual(valueError("trucks_cy: needed"));
    },
  );

  test("gate is skipped", () => {
    expect(calls.PANELS(72, 12, [[null], [10], [""], [0]])).toBe(calls.PANELS(72, 12, 10));
  });
});

describe("A result in the shape of its argument", () => {
  test("is a row for a row, a column for a column, one cell for one cell", () => {
    expect(calls.FEET([["1'", "2'"]])).toEqual([[1, 2]]);
    expect(calls.FEET([["1'"], ["2'"]])).toEqual([[1], [2]]);
    expect(calls.FEET([[12]])).toEqual([[12]]);
    expect(calls.FEET("12 in")).toBe(1);
  });

  test("keeps a bad cell's error to itself, and passes a cell's own error through", () => {
    const refError: CellError = { error: "#REF!" };
    expect(calls.AREA([["10'", -3, "wide", 46000, refError, null, true]])).toEqual([
      [
        Math.PI * 25,
        valueError("diameter_ft: must be over 0 to 5000 ft"),
        valueError('diameter_ft: cannot read "wide": write 30\' 4 1/2"'),
        valueError("diameter_ft: this looks like a date: write 12' 6\""),
        refError,
        "",
        valueError("diameter_ft: must be a number or a text"),
      ],
    ]);
  });

  test("keeps a question without an answer to its own cell", () => {
    expect(calls.PANELS([[72], [3], [null]], 12, 10)).toEqual([[18], [noAnswer], [""]]);
  });

  test("is as quick and exact on numbers as on texts", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0.01, max: 5000, noNaN: true }), { minLength: 1 }), (sizes) => {
        const column = sizes.map((size) => [size]);
        expect(calls.CIRCUMFERENCE(column)).toEqual(column.map(([size]) => [Math.PI * size]));
      }),
    );
  });
});

describe("An error in a cell", () => {
  const sent: [string, unknown, CellError][] = [
    ["of this add-in", { error: "#N/A", message: "why" }, { error: "#N/A", message: "why" }],
    ["of the host", { code: "#DIV/0!" }, { error: "#DIV/0!" }],
    ["of the host with a message", { code: "#N/A", message: "why" }, { error: "#N/A", message: "why" }],
    ["of a kind not known", { code: "#BUSY!" }, { error: "#VALUE!" }],
    ["as a text", "#REF!", { error: "#REF!" }],
  ];

  test.each(sent)("%s is the whole result where it is not in the shape argument", (_kind, cell, expected) => {
    expect(calls.ARENA_AREA(190, cell as Value)).toEqual(expected);
    expect(calls.PANELS([[72], [52]], 12, [[10], [cell]] as Value)).toEqual(expected);
    expect(calls.LOADS(37, [[16], [cell]] as Value)).toEqual(expected);
    expect(calls.FOOTING([[72], [cell]] as Value, 0)).toEqual([[0], [expected]]);
  });
});

describe("A scalar argument", () => {
  test("takes the one cell of a range, and refuses more", () => {
    expect(calls.ARENA_AREA([[190]], [[90]], [[]])).toBe(17100);
    expect(calls.ARENA_AREA([[190, 200]], 90)).toEqual({ error: "#VALUE!", message: "length_ft: one cell, not a range of 2" });
    expect(calls.FOOTING([[52, 72]], [[3], [4]])).toEqual(valueError("depth_in: one cell"));
    expect(calls.PANELS(72, 12, 10, 0, [["nearest"], ["at least"]])).toEqual(valueError("fit: one cell"));
  }); // prettier-ignore

  test("takes a number written as a text, with a decimal comma or a percent sign", () => {
    expect(calls.TONS("10,5", "1.5")).toBe(15.75);
    expect(calls.FILL(8100, 1.2, "10 %")).toBeCloseTo(33, 9);
    expect(calls.TONS("1,500")).toEqual(valueError("cubic_yards: the comma"));
  });

  test("says what is allowed when it is out of range", () => {
    expect(message(calls.FILL(8100, 3, 201))).toBe("overrun_pct: must be from 0 to 200");
    expect(message(calls.FILL(8100, 3, 0, 100))).toBe("settle_pct: must be from 0 to 90");
    expect(message(calls.TONS(10, 11))).toBe("tons_per_cy: must be from 0.1 to 10");
    expect(message(calls.FEET_INCHES(10, 2.5))).toBe("denominator: must be a whole number from 1 to 64");
    expect(message(calls.PANELS(72, 12, 10, 13))).toBe("pin_gap_in: must be from -12 to 12 in");
    expect(message(calls.PANELS(72, 12, 10, 0, "tight"))).toBe(
      'fit: must be "nearest", "at least", "at most" or blank',
    );
    expect(message(calls.ARENA_AREA(190, 90, 46))).toBe(
      "corner_radius_ft: at most half the shorter side, 45'",
    );
  });

  test("reads a fit without regard to case and spaces", () => {
    expect(calls.PANELS(66, 12, 10, 0, " At  Least ")).toBe(calls.PANELS(66, 12, 10, 0, "at least"));
  });
});
