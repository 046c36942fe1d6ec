import { CellMessages } from "../../../src/hosts/browser/cell-messages";
import { FunctionError, type BundledFunction } from "../../../src/hosts/browser/functions-bundle";
import { penFunctions } from "../../../src/hosts/browser/pen-functions";

const bundle = (work: BundledFunction) =>
  penFunctions({
    metadata: [
      {
        id: "TRY",
        name: "TRY",
        parameters: [
          { name: "sizes_ft", dimensionality: "matrix" },
          { name: "depth_in", optional: true },
        ],
      },
    ],
    functions: new Map([["TRY", work]]),
  })("TRY");

describe("a bundled function as documents see it", () => {
  const echo = bundle((...cells) => JSON.stringify(cells));

  test("gets a range argument as a rectangle and a scalar one as one cell, however they are given", () => {
    expect(echo(5, [[3]])).toBe("[[[5]],3]");
    expect(echo([[1, 2]], 3)).toBe("[[[1,2]],3]");
  });

  test("gets null for what is left out and for a blank cell", () => {
    expect(echo([[null]])).toBe("[[[null]],null]");
    expect(echo(undefined, null)).toBe("[null,null]");
  });

  test("refuses a range for a scalar argument by its name", () => {
    expect(echo(1, [[1, 2]])).toEqual({
      error: "#VALUE!",
      message: "depth_in: takes one cell, not a range.",
    });
  });

  test("gets an error in a cell as an error value", () => {
    const seen = bundle((cells) =>
      (cells as unknown[][])[0][0] instanceof FunctionError ? "error" : "other",
    );
    expect(seen([[{ error: "#N/A" }]])).toBe("error");
  });

  test("gives errors that are thrown or returned in place, and never throws", () => {
    const refusing = bundle(() => { throw new FunctionError("#N/A", "no pen closes"); }); // prettier-ignore
    expect(refusing(1)).toEqual({ error: "#N/A", message: "no pen closes" });
    const mixed = bundle(() => [[1, new FunctionError("#VALUE!", "bad")]]);
    expect(mixed(1)).toEqual([[1, { error: "#VALUE!", message: "bad" }]]);
    const broken = bundle(() => { throw new TypeError("x is undefined"); }); // prettier-ignore
    expect(broken(1)).toEqual({ error: "#VALUE!", message: expect.stringContaining("TRY failed") });
  });

  test("is #NAME? where the bundle lacks it", () => {
    expect(penFunctions({ metadata: [], functions: new Map() })("TRY")(1)).toEqual({ error: "#NAME?" });
  });
});

describe("why cells show errors", () => {
  const place = { sheet: "s", row: 1, column: 2 };

  test("is kept by cell until the function that said it has an answer", () => {
    const messages = new CellMessages();
    messages.note(place, "PEN.AREA", { error: "#VALUE!", message: "too wide" });
    expect(messages.find(place, "#VALUE!")).toBe("too wide");
    expect(messages.find(place, "#N/A")).toBeUndefined();
    expect(messages.find({ ...place, row: 2 }, "#VALUE!")).toBeUndefined();
    messages.note(place, "PEN.FEET", undefined);
    expect(messages.find(place, "#VALUE!")).toBe("too wide");
    messages.note(place, "PEN.AREA", undefined);
    expect(messages.find(place, "#VALUE!")).toBeUndefined();
  });
});
