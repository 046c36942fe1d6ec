import { fieldOf, fields, slotKeys } from "../../src/estimate/fields";
import { newJob, problemsOf, readField } from "../../src/estimate/job";
import { Refusal } from "../../src/units/refusal";

const read = (key: string, raw: unknown) => readField(fieldOf(key), raw);
const refused = (key: string, raw: unknown) => {
  try {
    return `read as ${read(key, raw)}`;
  } catch (refusal) {
    expect(refusal).toBeInstanceOf(Refusal);
    return (refusal as Refusal).message;
  }
};

describe("reading what a person answers", () => {
  it.each([
    ["size", "72", 72],
    ["size", `72' 6"`, 72.5],
    ["size", "72-6", 72.5],
    ["size", "22 m", 22 / 0.3048],
    ["panel_1", "144 in", 12],
    ["depth", "3", 3],
    ["depth", "75 mm", 75 / 25.4],
    ["depth", "2 1/2", 2.5],
    ["pin_gap", "-1/2", -0.5],
    ["pin_gap", "0", 0],
    ["tax", "8.25 %", 8.25],
    ["budget", "$1,200.50", 1200.5],
    ["truck_1", "16", 16],
    ["truck_1", "16 yd", 16],
    ["truck_1", "13.5 cu yd", 13.5],
    ["stakes_use", "0", 0],
    ["size_means", "Inside Clear", "inside clear"],
    ["job_name", " =1+1 ", "=1+1"],
  ])("%s: %s is read as %p", (key, raw, value) => {
    const got = read(key, raw);
    if (typeof value === "number") expect(got).toBeCloseTo(value, 12);
    else expect(got).toBe(value);
  });

  it.each(["", "   ", null, undefined])("%p is a blank", (raw) => {
    for (const { key } of fields) expect(read(key, raw)).toBeNull();
  });

  it.each([
    ["size", "7", "Allowed is 8 to 500 ft."],
    ["size", "wide", /30' 4 1\/2"/],
    ["size", "1,500", /comma/],
    ["depth", "-1", "Allowed is 0 to 24 in."],
    ["panel_1_use", "2.5", "Write a whole number, 0 to 10,000."],
    ["size_means", "roughly", "Choose one of: pin circle, inside clear, outside."],
    ["tax", "lots", /such as 12/],
    ["budget", "-1", "Allowed is $0 to $10,000,000."],
    ["size", NaN, "Allowed is 8 to 500 ft."],
    ["size", Infinity, "Allowed is 8 to 500 ft."],
  ])("%s: %p is refused in a sentence that says what is allowed", (key, raw, sentence) => {
    const said = refused(key, raw);
    if (typeof sentence === "string") expect(said).toBe(sentence);
    else expect(said).toMatch(sentence);
  });
});

describe("a new job", () => {
  it("has every field of the list, each at a default that the field itself allows", () => {
    const job = newJob();
    expect(Object.keys(job)).toEqual(fields.map(({ key }) => key));
    expect(problemsOf(job)).toEqual({});
  });

  it("needs a size and a panel length, and nothing else", () => {
    const blank = Object.fromEntries(fields.map(({ key }) => [key, null]));
    expect(Object.keys(problemsOf(blank))).toEqual(["size", "panel_1"]);
  });

  it("names the field of every wrong answer", () => {
    expect(Object.keys(problemsOf({ ...newJob(), size: 2, tax: 200, size_means: "roughly" }))).toEqual([
      "size",
      "size_means",
      "tax",
    ]);
  });
});

describe("the list of fields", () => {
  it("has keys of its own, a label in both languages, and a range for every number", () => {
    expect(new Set(fields.map(({ key }) => key)).size).toBe(fields.length);
    for (const { key, label, kind, range, options } of fields) {
      expect(key).toMatch(/^[a-z][a-z0-9_]*$/);
      expect(label.en && label.es).toBeTruthy();
      if (kind === "choice") expect(options!.length).toBeGreaterThan(1);
      else if (kind !== "text") expect(range![0]).toBeLessThan(range![1]);
    }
  });

  it("fixes six panel lengths, four gates and four trucks", () => {
    expect([slotKeys("panel"), slotKeys("gate"), slotKeys("truck")].map(({ length }) => length)).toEqual([
      6, 4, 4,
    ]);
  });
});
