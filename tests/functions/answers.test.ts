import fc from "fast-check";
import { calls } from "../../functions/calls";
import { messages } from "../../functions/messages";
import { type CellError, type Value } from "../../src/units/cell";

const message = (value: Value) => (value as CellError).message;
const valueError = (start: string) => ({ error: "#VALUE!", message: expect.stringMatching(`^${start}`) });
const noAnswer = { error: "#N/A", message: expect.any(String) };

describe("Ranges that belong together", () => {
  const across = calls.PIN_CIRCLE([[12, 10]], [[14, 3]], 10) as number;

  test("are paired in reading order, row or column", () => {
    expect(calls.PIN_CIRCLE([[12], [10]], [[14, 3]], [[10]])).toBe(across);
    expect(calls.PIN_CIRCLE([[10], [12]], [[3], [14]], 10)).toBeCloseTo(across, 9);
    expect(calls.PIN_CIRCLE([[12, null, 10]], [[14, "", 3]], 10)).toBe(across);
    expect(calls.PIN_CIRCLE([[12, 16, 10]], [[14, null, 3]], 10)).toBe(across);
  });

  test("must have as many cells", () => {
    expect(message(calls.PIN_CIRCLE([[12, 10]], 14))).toBe("counts: must have as many cells as panels_ft, 2");
    expect(message(calls.LOADS(37, [[16], [10]], 0, [[400]]))).toBe(
      "prices: must have as many cells as trucks_cy, 2",
    );
  });

  test("a count beside a blank panel is refused", () => {
    expect(calls.INSIDE_AREA([[12], [null]], [[14], [3]])).toEqual(
      valueError("counts: stands beside a blank panel"),
    );
  });

  test("counts are whole", () => {
    expect(calls.INSIDE_CLEAR(12, 14.5)).toEqual(
      valueError("counts: must be a whole number from 0 to 10000"),
    );
  });
});

describe("A pen that is asked about", () => {
  test("has its measures", () => {
    expect(calls.PIN_CIRCLE(12, 15, 8)).toBeCloseTo(60.2357, 4);
    expect(calls.INSIDE_AREA(12, 15, 8)).toBeCloseTo(2775.679, 3);
    expect(calls.INSIDE_CLEAR(12, 15, 8)).toBeCloseTo(Math.sqrt(60.235733 ** 2 - 144), 3);
    expect(calls.PIN_CIRCLE(12, 15, 8, 1)).toBeGreaterThan(calls.PIN_CIRCLE(12, 15, 8) as number);
  });

  test("may be closed by gates alone", () =>
    expect(calls.PIN_CIRCLE(null, null, [[3], [4], [5]])).toBeCloseTo(5, 9));

  test("that does not close, or whose center lies outside, has no answer", () => {
    expect(calls.PIN_CIRCLE(12, 1, 12)).toEqual(noAnswer);
    expect(calls.PIN_CIRCLE(null, null)).toEqual(noAnswer);
    expect(calls.INSIDE_CLEAR([[3], [4]], [[1], [1]], 6.5)).toEqual(noAnswer);
    expect(calls.INSIDE_AREA([[3], [4]], [[1], [1]], 6.5)).toBeGreaterThan(0);
  });
});

describe("LOADS", () => {
  test("answers in the shape of the trucks, blank beside a blank truck", () => {
    expect(calls.LOADS(37, [[16], [null], [10]], 5)).toEqual([[1], [""], [2]]);
    expect(calls.LOADS(37, [[16, "", 10]], 5)).toEqual([[1, "", 2]]);
    expect(calls.LOADS(37, 10)).toBe(4);
  });

  test("takes prices all blank as left out, and a blank price as not offered", () => {
    expect(calls.LOADS(37, [[16], [10]], 5, [[null], [""]])).toEqual([[1], [2]]);
    expect(calls.LOADS(37, [[16], [10]], 5, null)).toEqual([[1], [2]]);
    expect(calls.LOADS(37, [[16], [10]], 5, [[null], [250]])).toEqual([[0], [4]]);
  });

  test("n loads' worth are n loads, for n to 400", () => {
    for (let n = 0; n <= 400; n++) expect(calls.LOADS(n * 14.4, 14.4)).toBe(n);
  });
});

describe("A length that no fence has", () => {
  test.each([1e-9, 1e-300, 5e-324])(
    "of %p ft gives an error with a message, and fills no memory",
    (length) => {
      expect(calls.PANEL_MIX(1, [[length]])).toEqual(noAnswer);
      expect(message(calls.PANELS(5000, 5e-324))).toBe(messages.noResult);
    },
  );
});

describe("FEET and FEET_INCHES", () => {
  test("FEET(FEET_INCHES(x)) is x within the denominator", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 4999, noNaN: true }),
        fc.integer({ min: 1, max: 64 }),
        (feet, parts) => {
          const written = calls.FEET_INCHES(feet, parts) as string;
          fc.pre(written !== '0"');
          expect(Math.abs((calls.FEET(written) as number) - feet)).toBeLessThanOrEqual(
            0.5 / parts / 12 + 1e-9,
          );
        },
      ),
    );
  });
});
