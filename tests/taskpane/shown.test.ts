import { fieldOf, fields } from "../../src/estimate/fields";
import { newJob } from "../../src/estimate/job";
import { figuresOf } from "../../src/estimate/figures";
import { estimate } from "../../src/estimate/estimate";
import { structures } from "../../src/estimate/structures";
import { examplePrices } from "../../src/estimate/prices";
import { freeName } from "../../taskpane/names";
import { inField, keyLabel, placesInUse, readBack, unbroken, without } from "../../taskpane/shown";

describe("what the panel shows", () => {
  it("reads lengths back in feet and inches, whatever their unit, and nothing else", () => {
    expect(readBack(fieldOf("size"), 66.25)).toBe(`66' 3"`);
    expect(readBack(fieldOf("depth"), 2.5)).toBe(`2 1/2"`);
    expect(readBack(fieldOf("size"), null)).toBe("");
    expect(readBack(fieldOf("tax"), 6)).toBe("");
  });

  it("keeps what was typed and writes numbers without the noise of their arithmetic", () => {
    expect([inField("66 ft 3"), inField(0.1 + 0.2), inField(59.0551181), inField(null)]).toEqual([
      "66 ft 3",
      "0.3",
      "59.0551",
      "",
    ]);
  });

  it("has a name without an underscore for every figure that the sheet can show", () => {
    for (const structure of structures) {
      const job = { ...newJob(), structure };
      const keys = Object.keys(figuresOf(job, estimate(job, examplePrices)));
      expect(keys.length).toBeGreaterThan(60);
      for (const key of keys) expect(keyLabel(key)).toMatch(/^[^_]+$/);
    }
    expect(keyLabel("line_posts_count")).toBe("Line posts, counted");
    expect(keyLabel("panel_1_amount")).toBe("Panel length 1, amount");
    expect(keyLabel("sum_fence")).toBe("Sum of fence");
    expect(keyLabel("stakes_count")).toBe("Stakes, counted");
    expect(keyLabel("own_gates_2_amount")).toBe("Own gates 2, amount");
  });

  it("breaks no line inside a size", () => {
    expect(unbroken("72 ft 3 1/4 in across the pins, 3.5 % short")).toBe(
      "72\u00a0ft 3\u00a01/4\u00a0in across the pins, 3.5\u00a0% short",
    );
  });

  it("finds the first free name, whatever the capitals", () => {
    expect(freeName("Estimate", ["Sheet1"])).toBe("Estimate");
    expect(freeName("Estimate", ["ESTIMATE", "Estimate 2", "Estimate 4"])).toBe("Estimate 3");
  });
});

describe("lists of places", () => {
  const answers = { ...newJob(), panel_2: 10, panel_2_use: 4, panel_3: "8'", truck_1: null };

  it("shows places up to the last one filled, and of panels and trucks at least one", () => {
    expect([placesInUse(answers, "panel"), placesInUse(answers, "truck"), placesInUse(answers, "gate")]).toEqual([3, 1, 1]); // prettier-ignore
    expect(placesInUse({ ...answers, gate_1: "" }, "gate")).toBe(0);
  });

  it("moves what is behind a place up when it is taken out, own counts with it", () => {
    const after: Record<string, unknown> = { ...answers, ...without(answers, "panel", 1) };
    expect([1, 2, 3, 4].map((place) => after[`panel_${place}`])).toEqual([10, "8'", null, null]);
    expect([1, 2].map((place) => after[`panel_${place}_use`])).toEqual([4, null]);
  });

  it("takes the number of a gate that is taken out from the fields that name gates, and counts down those above it", () => {
    const posts = { ...answers, leaf_1: 8, leaf_2: 10, gates_of_two: "1; 3", gates_on_face: 2, gates_by_other: "x" };
    const { gates_of_two, gates_on_face, gates_by_other } = without(posts, "leaf", 2);
    expect({ gates_of_two, gates_on_face, gates_by_other }).toEqual({ gates_of_two: "1; 2", gates_on_face: null, gates_by_other: "x" });
    expect(without({ ...posts, gates_by_other: "3, 4" }, "leaf", 1).gates_by_other).toBe("2; 3");
    expect(without(posts, "truck", 1)).not.toHaveProperty("gates_of_two");
  }); // prettier-ignore

  it("changes no field that the list of fields does not have", () => {
    const keys = new Set(fields.map(({ key }) => key));
    for (const list of ["panel", "gate", "truck"] as const)
      for (const key of Object.keys(without(answers, list, 1))) expect(keys).toContain(key);
  });
});
