import * as functions from "../../functions/functions";
import { calls } from "../../functions/calls";

class HostError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

beforeAll(() => Object.assign(globalThis, { CustomFunctions: { Error: HostError } }));
afterAll(() => void Reflect.deleteProperty(globalThis, "CustomFunctions"));

const thrown = (work: () => unknown): unknown => {
  try {
    return work();
  } catch (error) {
    return error;
  }
};

describe("A function as the spreadsheet calls it", () => {
  test("is exported for every id, and gives what its call gives", () => {
    const byName = functions as unknown as Record<string, (...terms: unknown[]) => unknown>;
    const exported = Object.keys(calls).map((id) => id.toLowerCase().replace(/_([a-z])/g, (_, next) => next.toUpperCase()));
    expect(Object.keys(byName).sort()).toEqual(exported.sort());
    expect(functions.arenaArea(190, 90, 15)).toBe(calls.ARENA_AREA(190, 90, 15));
    expect(functions.pinCircle([[12]], [[18]], [[10]], null)).toBe(calls.PIN_CIRCLE(12, 18, 10));
    expect(functions.panels([[72, 52]], 12, [[10]])).toEqual(calls.PANELS([[72, 52]], 12, 10));
  }); // prettier-ignore

  test("gives a rectangle where its metadata says so, even for one cell", () => {
    expect(functions.circumference(52 as never)).toEqual([[Math.PI * 52]]);
    expect(functions.loads(37, [[16], [10]], 5)).toEqual([[1], [2]]);
  });

  test("throws an error that is the whole result, as one of the host's with its message", () => {
    expect(thrown(() => functions.arenaArea(190, "wide"))).toMatchObject({
      code: "#VALUE!",
      message: expect.stringMatching(/^width_ft/),
    });
    expect(thrown(() => functions.pinCircle([[12]], [[1]]))).toMatchObject({ code: "#N/A" });
    expect(thrown(() => functions.loads(37, [["x"]]))).toBeInstanceOf(HostError);
  });

  test("leaves an error in its own cell of a rectangle", () => {
    const [[good, bad]] = functions.area([[52, -1]]);
    expect(good).toBe(calls.AREA(52));
    expect(bad).toBeInstanceOf(HostError);
    expect(bad.message).toBe("diameter_ft: must be over 0 to 5000 ft");
  });

  test("passes a cell's error on without a message, which only #VALUE! and #N/A carry", () => {
    const [[passed]] = functions.area([[{ code: "#REF!", message: "gone" }]]);
    expect([passed.code, passed.message]).toEqual(["#REF!", ""]);
  });
});
