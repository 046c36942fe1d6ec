import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { calls } from "../../functions/calls";
import { guides } from "../../functions/examples";
import { formulaText } from "../../functions/formula-text";
import { helpPages, type HelpPage } from "../../functions/help";
import { finishMetadata, type Metadata } from "../../functions/metadata";
import { quantities } from "../../functions/quantities";
import { isError } from "../../src/units/cell";

// Kept in saved workbooks: an id, an argument's name, its place and whether it may be left out never change.
const shipped: Record<string, string> = {
  CIRCUMFERENCE: "diameter_ft",
  AREA: "diameter_ft",
  ARENA_AREA: "length_ft, width_ft, [corner_radius_ft]",
  ARENA_PERIMETER: "length_ft, width_ft, [corner_radius_ft]",
  DIAGONAL: "length_ft, width_ft",
  OUT_OF_SQUARE: "length_ft, width_ft, diagonal_1_ft, diagonal_2_ft",
  PANELS: "diameter_ft, panel_ft, [gates_ft], [pin_gap_in], [fit]",
  PIN_CIRCLE: "panels_ft, counts, [gates_ft], [pin_gap_in]",
  INSIDE_CLEAR: "panels_ft, counts, [gates_ft], [pin_gap_in]",
  INSIDE_AREA: "panels_ft, counts, [gates_ft], [pin_gap_in]",
  PANEL_MIX: "diameter_ft, panels_ft, [gates_ft], [pin_gap_in], [prices], [tolerance_ft], [fit], [stock]",
  POSTS: "diameter_ft, spacing_ft, [gates_ft], [gate_post_in]",
  BAY: "diameter_ft, spacing_ft, [gates_ft], [gate_post_in]",
  POST_LAYOUT: "diameter_ft, spacing_ft, [gates_ft], [gate_post_in], [bearing_deg]",
  PANEL_LAYOUT: "panels_ft, counts, [gates_ft], [pin_gap_in], [bearing_deg]",
  FOOTING: "diameter_ft, depth_in, [overrun_pct], [settle_pct]",
  FILL: "area_sqft, depth_in, [overrun_pct], [settle_pct]",
  DEPTH: "cubic_yards, area_sqft",
  TONS: "cubic_yards, [tons_per_cy]",
  LOADS: "cubic_yards, trucks_cy, [short_pct], [prices]",
  TRUCK_YARDS: "body_cy, payload_tons, [tons_per_cy]",
  HOLE_CONCRETE: "hole_in, depth_in, [post_in], [post_shape], [gravel_in]",
  BAGS: "cubic_feet, [bag_lb], [waste_pct]",
  FEET: "length",
  FEET_INCHES: "feet, [denominator]",
};

let metadata: Metadata;
let pages: HelpPage[];

beforeAll(async () => {
  const { metadataJson, errors } = await generateCustomFunctionsMetadata("functions/functions.ts");
  expect(errors).toEqual([]);
  metadata = finishMetadata(JSON.parse(metadataJson), "https://example.org/penstake");
  pages = helpPages(metadata);
});

describe("What the spreadsheet is told", () => {
  test("holds every shipped function with its arguments in their order, and no other", () => {
    const told = metadata.functions.map(({ id, parameters }) => [
      id,
      parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", "),
    ]);
    expect(Object.fromEntries(told)).toEqual(shipped);
  });

  test("has names that no spreadsheet takes for a cell address", () => {
    for (const { id, name } of metadata.functions) {
      expect(name).toBe(id);
      expect(name).toMatch(/^[A-Z][A-Z0-9_.]{2,}$/);
      expect(name).not.toMatch(/^([A-Z]{1,3}\d+|R\d*(C\d*)?|C\d*)$/);
    }
  });

  test("describes every function and argument in one line, each with its unit and default", () => {
    for (const { description, parameters } of metadata.functions) {
      expect(description).toMatch(/^[A-Z].{20,}\.$/);
      for (const { name, description, optional, type } of parameters) {
        expect(type).toBe("any");
        expect(description).toMatch(/^\S.{10,}\.?$/);
        if (optional) expect(description).toMatch(/Default /);
        if (name.endsWith("_ft")) expect(description).toMatch(/\bft\b/);
        if (name.endsWith("_in")) expect(description).toMatch(/inches/);
        if (name.endsWith("_cy") && name !== "tons_per_cy") expect(description).toMatch(/cubic yards/);
      }
    }
  });

  test("lets errors in cells reach the functions, and none is volatile", () => {
    expect(metadata.allowErrorForDataTypeAny).toBe(true);
    expect(metadata.allowCustomDataForDataTypeAny).toBe(false);
    for (const one of metadata.functions) expect(one).not.toHaveProperty("options.volatile");
  });

  test("points at a help page of the host that there is", () => {
    for (const { id, helpUrl } of metadata.functions) {
      expect(helpUrl).toBe(`https://example.org/penstake/help/${id.toLowerCase()}.html`);
      expect(pages.map(({ file }) => file)).toContain(`${id.toLowerCase()}.html`);
    }
  });

  test("agrees with the calls and the guides, and the numbers' names with the arguments'", () => {
    const ids = Object.keys(shipped).sort();
    expect(Object.keys(calls).sort()).toEqual(ids);
    expect(Object.keys(guides).sort()).toEqual(ids);
    const names = new Set(metadata.functions.flatMap(({ parameters }) => parameters.map(({ name }) => name)));
    expect([...names].sort()).toEqual(
      [...Object.values(quantities).map(({ name }) => name), "fit", "post_shape"].sort(),
    );
  });
});

describe("The help", () => {
  test("has two examples a function that give results and no error", () => {
    for (const [id, { examples, source }] of Object.entries(guides)) {
      expect(examples).toHaveLength(2);
      expect(source).toMatch(/^[A-Z].{30,}\.$/);
      for (const { terms } of examples) {
        const result = calls[id](...terms);
        expect((Array.isArray(result) ? result.flat() : [result]).filter((cell) => isError(cell) || cell === "")).toEqual([]);
        expect(terms.length).toBeLessThanOrEqual(shipped[id].split(", ").length);
      }
    }
  }); // prettier-ignore

  test("shows the arguments, the examples and their results, and where the rule comes from", () => {
    const unescaped = (html: string) => html.replace(/&#(\d+);/g, (_, code) => String.fromCharCode(Number(code)));
    for (const { id, description, parameters } of metadata.functions) {
      const html = unescaped(pages.find(({ file }) => file === `${id.toLowerCase()}.html`)!.html);
      for (const text of [description, guides[id].source, ...parameters.map((one) => one.description)])
        expect(html).toContain(text);
      for (const { asks, terms } of guides[id].examples) {
        expect(html).toContain(asks);
        expect(html).toContain(formulaText(id, terms));
      }
      expect(html).toContain('href="index.html"');
    }
    expect(unescaped(pages.find(({ file }) => file === "circumference.html")!.html)).toContain("<td>163.3628</td>");
    expect(unescaped(pages.find(({ file }) => file === "loads.html")!.html)).toContain("<tr><td>1</td></tr><tr><td>2</td></tr>");
  }); // prettier-ignore

  test("has an index that leads to every function", () => {
    const index = pages.find(({ file }) => file === "index.html")!.html;
    for (const id of Object.keys(shipped)) expect(index).toContain(`href="${id.toLowerCase()}.html"`);
    expect(pages).toHaveLength(Object.keys(shipped).length + 1);
  });

  test("is self-contained under a strict policy and escapes what it shows", () => {
    const hostile = structuredClone(metadata);
    hostile.functions[0].description = `<script>alert("1")</script> & 'more'`;
    for (const { html } of helpPages(hostile)) {
      expect(html).toContain(`content="default-src 'none'; style-src 'self'`);
      expect(html).not.toMatch(/<script|https?:/);
      expect(html).toMatch(/^<!doctype html>\n<html lang="en">/);
    }
  });
});

describe("An example's formula", () => {
  test("writes ranges as array constants and doubles quotes", () => {
    expect(formulaText("LOADS", [37, [[16], [10]], undefined, [[1, 2]]])).toBe(
      "=PEN.LOADS(37, {16;10}, , {1,2})",
    );
    expect(formulaText("FEET", [`30' 4"`])).toBe(`=PEN.FEET("30' 4""")`);
    expect(formulaText("AREA", [[[52]]])).toBe("=PEN.AREA(52)");
  });
});
