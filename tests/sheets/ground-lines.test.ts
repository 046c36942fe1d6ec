import { calls } from "../../functions/calls";
import { estimate } from "../../src/estimate/estimate";
import { gateCautions } from "../../src/estimate/gate-cautions";
import { newJob, type Job } from "../../src/estimate/job";
import { messages } from "../../src/estimate/messages";
import { type PanelPen } from "../../src/estimate/panel-pen";
import { examplePrices } from "../../src/estimate/prices";
import { structures } from "../../src/estimate/structures";
import { contentOfPlans } from "../../src/sheets/calculate";
import { estimatePlan } from "../../src/sheets/estimate";
import { laidOut } from "../../src/sheets/estimate-layout";
import { readEstimate } from "../../src/sheets/keyed";
import { pricesPlan } from "../../src/sheets/prices";
import { pricesName } from "../../src/sheets/prices-layout";
import { shownBy } from "./shown";

const pen = (name: string) => calls[name];

/** The sheet of a job: what its items are called, and its keyed cells. */
function sheetOf(changes: Partial<Job>) {
  const job = { ...newJob(), ...changes } as Job;
  const plans = [estimatePlan(job, "Estimate", pricesName), pricesPlan(examplePrices)];
  const shown = shownBy(contentOfPlans(plans, pen).sheets[0]);
  const { cells } = readEstimate(shown);
  const itemOf = (line: string) => shown.values[cells[`${line}_quantity`].row][1];
  return { job, cells, itemOf };
}

describe("base and footing on the sheet of an estimate", () => {
  it("stand one under the other after the fence, and before what hauls them, in every structure", () => {
    for (const structure of structures) {
      const sections = laidOut(structure).sections.map(({ section }) => section);
      const at = sections.indexOf("base");
      expect(sections.slice(at - 1, at + 3)).toEqual(["gates", "base", "footing", "hauling"]);
    }
  });

  it("say how many lifts the base is compacted in, and how many loads of a truck bring base", () => {
    const deep = sheetOf({ base_depth: 9, truck_1: 16 });
    expect(deep.itemOf("base")).toBe("Base stone, loose, in 3 lifts");
    const loads = deep.cells.base_truck_1_count.value as number;
    expect(deep.itemOf("truck_1")).toBe(`Truck load of 16 cu yd, ${loads} of base`);
    expect(deep.cells.truck_1_quantity.value).toBe(loads + (deep.cells.truck_1_count.value as number));
    const thin = sheetOf({ base_depth: 4 });
    expect(thin.itemOf("base")).toBe("Base stone, loose");
    const none = sheetOf({});
    expect(none.itemOf("truck_1")).toBe("Truck load of 16 cu yd");
    expect([none.cells.base_quantity.value, none.cells.sum_base.value]).toEqual(["", 0]);
  });

  it("warn of gates that shut a truck out where it brings base alone, as the panel does", () => {
    for (const [base_depth, warned] of [[4, true], [0, false]] as const) {
      const { job, cells } = sheetOf({ depth: 0, base_depth, gate_1: 8 });
      const { pen: built, base, sand } = estimate(job, examplePrices);
      expect(String(cells.gate_warning.value).includes(messages.noTruck)).toBe(warned);
      expect(gateCautions(built as PanelPen, base.delivered + sand.delivered).includes(messages.noTruck)).toBe(warned);
    }
  });
}); // prettier-ignore
