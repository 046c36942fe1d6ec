import { newJob } from "../../../src/estimate/job";
import { structures } from "../../../src/estimate/structures";
import { likeRows } from "../../../src/hosts/excel/like-rows";
import { estimatePlan } from "../../../src/sheets/estimate";
import { liveFormula } from "../../../src/sheets/formula";
import { pricesName } from "../../../src/sheets/prices-layout";
import { sheetNamed } from "./outcomes";
import { countingWorkbook } from "./stand-in";

describe("rows of one list that Excel copies", () => {
  it.each(structures)("hold the formulas that the plan of a %s says, in every cell", async (structure) => {
    const excel = countingWorkbook();
    const plan = estimatePlan({ ...newJob(), structure }, "Estimate", pricesName);
    await excel.host.write([plan]);
    const { cells } = sheetNamed(excel, "Estimate");
    const formulas = plan.cells.filter(({ says }) => says.kind !== "constant");
    expect(formulas.map(({ row, column }) => cells.get(`${row} ${column}`)?.formula)).toEqual(
      formulas.map(({ says }) => liveFormula(says)),
    );
    const copies = likeRows(plan.cells);
    expect(copies.length).toBeGreaterThan(1);
    expect(copies.filter(({ area, from }) => area.top > from.top + 1)).not.toEqual([]);
  });
});
