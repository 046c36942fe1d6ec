import { newJob } from "../../../src/estimate/job";
import { structures } from "../../../src/estimate/structures";
import { spotsIn } from "../../../src/hosts/excel/areas";
import { spreads } from "../../../src/hosts/excel/spreads";
import { estimatePlan } from "../../../src/sheets/estimate";
import { contentOfPlan } from "../../../src/sheets/workbook-content";
import { pricesName } from "../../../src/sheets/prices-layout";
import { sheetNamed } from "./outcomes";
import { countingWorkbook } from "./stand-in";

describe("formulas that Excel copies down a sheet", () => {
  it.each(structures)(
    "leave in every cell what the plan of a %s says, and nothing anywhere else",
    async (structure) => {
      const excel = countingWorkbook();
      const plan = estimatePlan({ ...newJob(), structure }, "Estimate", pricesName);
      await excel.host.write([plan]);
      const held = [...sheetNamed(excel, "Estimate").cells].map(([place, { formula }]) => [place, formula]);
      const planned = contentOfPlan(plan).cells.flatMap(({ row, column, value, formula = value }) =>
        formula === null || formula === "" ? [] : [[`${row} ${column}`, formula]],
      );
      expect(Object.fromEntries(held)).toEqual(Object.fromEntries(planned));
      const { chosen, done } = spreads(plan.cells);
      const reached = chosen.flatMap(({ from, area }) => spotsIn({ ...area, top: from.top }));
      expect(chosen.length).toBeGreaterThan(0);
      expect(done.size).toBeLessThan(reached.length);
    },
  );
});
