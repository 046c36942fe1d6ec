import { refused, sheetNames, state } from "./outcomes";
import { samplePlan } from "./sample-plan";
import { countingWorkbook } from "./stand-in";

const small = (name: string) => samplePlan(name, 8);

describe("a write that fails half way", () => {
  const plans = () => [small("Prices"), small("Estimate 1")];

  async function actionsOfAWrite(): Promise<number[]> {
    const excel = countingWorkbook();
    await excel.host.write(plans());
    return [...excel.sizes];
  }

  it("leaves the workbook as it was, at whichever action Excel refuses, or names the sheet to delete", async () => {
    const sizes = await actionsOfAWrite();
    const excel = countingWorkbook();
    const before = state(excel);
    const named: string[] = [];
    let untouched = 0;
    for (const [request, size] of sizes.entries())
      for (let action = 0; action < size; action++) {
        excel.reset();
        excel.fail({ request, action, code: "GeneralException" });
        const message = await refused(excel.host.write(plans()));
        expect(excel.trips()).toBe(request + 2);
        if (message.endsWith("The workbook is as it was.")) {
          expect(state(excel)).toEqual(before);
          untouched++;
        } else {
          named.push(/The sheet "(.*)" may have been left unfinished/.exec(message)![1]);
          expect(sheetNames(excel)).toEqual(["Sheet1", named.at(-1)]);
          excel.book.sheets.pop();
        }
      }
    // Only between a sheet's making and the trace that tells of it can nobody know whose the sheet is.
    expect(named).toEqual(["Prices", "Estimate 1"]);
    expect(untouched + 2).toBe(sizes[0] + sizes[1]);
    expect(untouched).toBeGreaterThan(200);
  });

  it("names the sheets to delete where Excel no longer answers", async () => {
    const sizes = await actionsOfAWrite();
    for (const [request, action] of [[0, 0], [0, 40], [0, sizes[0] - 1], [1, 0], [1, sizes[1] - 1]]) {
      const excel = countingWorkbook();
      excel.fail({ request, action, code: "GeneralException", silent: true });
      const message = await refused(excel.host.write(plans()));
      expect(message).toMatch(/no longer answers/);
      expect(message).toMatch(/if you see them, delete them: "Prices", "Estimate 1"/);
    }
  }); // prettier-ignore

  it("sends nothing where a picture cannot be drawn", async () => {
    const excel = countingWorkbook();
    const plan = small("Estimate 1");
    plan.pictures[0].svg = "no picture";
    expect(await refused(excel.host.write([plan]))).toMatch(/could not be drawn.*as it was/);
    expect(excel.trips()).toBe(0);
  });

  it("never deletes a sheet of the user's that bears the name", async () => {
    const excel = countingWorkbook({ sheets: ["Estimate 1"] });
    const before = state(excel);
    await refused(excel.host.write([small("Estimate 1")]));
    excel.fail({ request: 1, action: 0, code: "AccessDenied" });
    await refused(excel.host.write([small("Estimate 1")]));
    expect(state(excel)).toEqual(before);
  });
});

describe("taking a write back", () => {
  it("is one step where Excel can group", async () => {
    const excel = countingWorkbook({ api: 20 });
    await excel.host.write([small("Estimate 1")]);
    expect(excel.runs).toEqual([{ mergeUndoGroup: true }]);
  });

  it("is not asked for where Excel cannot group", async () => {
    const excel = countingWorkbook({ api: 19 });
    await excel.host.write([small("Estimate 1")]);
    expect(excel.runs).toEqual([{}]);
    expect(excel.trips()).toBe(2);
  });

  it("is given up, and the sheet written, where Excel refuses the group", async () => {
    const excel = countingWorkbook({ groups: false });
    await excel.host.write([small("Prices"), small("Estimate 1")]);
    expect(sheetNames(excel)).toEqual(["Sheet1", "Prices", "Estimate 1"]);
    expect(excel.book.active.name).toBe("Estimate 1");
    expect(excel.runs.filter((options) => "mergeUndoGroup" in options)).toHaveLength(1);
  });
});
