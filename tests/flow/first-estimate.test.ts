import { type Page } from "playwright-core";
import { estimate } from "../../src/estimate/estimate";
import { figuresOf } from "../../src/estimate/figures";
import { newJob, type Job } from "../../src/estimate/job";
import { examplePrices } from "../../src/estimate/prices";
import { exampleJob } from "../../src/sheets/demo";
import { ownChanges, readEstimate } from "../../src/sheets/keyed";
import { describeInBrowser, forOneUser } from "../hosts/browser/page";
import { estimatePlaces } from "../sheets/typed-plan";

const job: Job = { ...newJob(), size: 72, panel_1: 12, gate_1: 10, depth: 3, truck_1: 16, truck_2: 10 };
const total = (changed: Partial<Job>, ownCents = 0) => {
  const { charges } = estimate({ ...job, ...changed } as Job, examplePrices, [
    { key: "own_fence_1", quantity: ownCents ? 1 : null, price: ownCents / 100, taxed: false },
  ]);
  return charges.total.toNumber();
};

const read = async (page: Page) =>
  readEstimate((await page.evaluate(() => window.penstake.host.look())).active);
const shownTotal = async (page: Page) => (await read(page)).cells.total?.value;

/** Waits until the active sheet's total is this, and fails with what it is where it never becomes so. */
async function totalBecomes(page: Page, wanted: number): Promise<void> {
  for (let k = 0; k < 100 && (await shownTotal(page)) !== wanted; k++) await page.waitForTimeout(100);
  expect(await shownTotal(page)).toBe(wanted);
}

/** Types into a cell of the active sheet as a user does: selects it, types, and presses Enter. */
async function typeInto(page: Page, key: string, text: string): Promise<void> {
  const { row, column } = estimatePlaces[key];
  await page.evaluate(
    ([r, c]) => void window.penstake.workbook.book.getActiveSheet().getRange(r, c).activate(),
    [row, column] as const,
  );
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
}

describeInBrowser("a first estimate in the browser workbook", () => {
  let page: Page;
  forOneUser((opened) => (page = opened));

  test("starts on an example that is marked as invented, with every figure computed", async () => {
    const { active, sheetNames } = await page.evaluate(() => window.penstake.host.look());
    expect(sheetNames).toEqual(["Example estimate", "Try it", "Prices"]);
    expect(active.values[2][1]).toMatch(/invented/);
    const errors = active.values.flat().filter((value) => typeof value === "object" && value !== null);
    expect(errors).toEqual([]);
    const figures = figuresOf(exampleJob(), estimate(exampleJob(), examplePrices));
    expect(ownChanges(readEstimate(active), figures)).toEqual([]);
  });

  test("answers in a builder's words while the panel is filled", async () => {
    await page.getByRole("button", { name: "New job" }).click();
    await page.fill("#penstake-size", "72");
    await page.fill("#penstake-gate_1", "10'");
    await page.fill("#penstake-truck_1", "16");
    await page.click("#penstake-truck-add");
    await page.fill("#penstake-truck_2", "10");
    const said = (await page.locator("#panel").innerText()).replace(/\s/g, " ");
    expect(said).toContain("18 panels of 12 ft and one 10 ft gate");
    expect(said).toMatch(/one 16 and two 10s/);
    expect(await page.locator(".state").innerText()).toBe("New job, not written");
  });

  test("is written by one button, with the total that the job has", async () => {
    await page.click(".main");
    await totalBecomes(page, total({}));
    expect(await page.locator(".state").innerText()).toBe("Estimate");
    const { active } = await page.evaluate(() => window.penstake.host.look());
    expect(
      active.formulas.flat().filter((cell) => typeof cell === "string" && cell.includes("PEN.")).length,
    ).toBeGreaterThan(20);
  });

  test("follows an input cell that is typed over, and so does the panel", async () => {
    await typeInto(page, "depth", "4");
    await totalBecomes(page, total({ depth: 4 }));
    await page.waitForFunction(
      () => document.querySelector<HTMLInputElement>("#penstake-depth")!.value === "4",
    );
  });

  test("takes a line of one's own into its sum", async () => {
    await typeInto(page, "own_fence_1_item", "Hired help");
    await typeInto(page, "own_fence_1_quantity", "1");
    await typeInto(page, "own_fence_1_price", "123.45");
    await totalBecomes(page, total({ depth: 4 }, 123_45));
  });

  test("gives one answer to the selected cell as a live formula, and refuses a cell that holds something", async () => {
    const select = (row: number) =>
      page.evaluate(
        (r) => void window.penstake.workbook.book.getActiveSheet().getRange(r, 19).activate(),
        row,
      );
    await select(5);
    await page.getByText("Put one answer into the selected cell").click();
    const put = page.getByRole("button", { name: "Put into the cell: Across the pins (pin circle)" });
    await put.click();
    await page.getByText("Put into Estimate!T6 as a live formula").waitFor();
    const { active } = await page.evaluate(() => window.penstake.host.look());
    expect(active.formulas[5][19]).toMatch(/^=PEN\.PIN_CIRCLE\(12,/);
    expect(active.values[5][19]).toBeCloseTo(Number((await read(page)).cells.pin_circle.value), 9);
    await put.click();
    await page.getByText("T6 holds something").waitFor();
  });

  test("is all there after a reload, figure for figure", async () => {
    await page.waitForTimeout(1500);
    const before = await read(page);
    await page.reload();
    await page.waitForFunction(() => window.penstake !== undefined);
    await totalBecomes(page, total({ depth: 4 }, 123_45));
    const after = await read(page);
    expect(after.cells).toEqual(before.cells);
    expect(after.cells.own_fence_1_item.value).toBe("Hired help");
  });

  test("finds in the grid that every function gives what it must", async () => {
    await page.getByRole("button", { name: "Check the functions" }).click();
    await page.getByText("compares every function here").waitFor();
    const verdict = async () => {
      const { active } = await page.evaluate(() => window.penstake.host.look());
      return String(active.values.flat().find((value) => /^\d+ of \d+ /.test(String(value))));
    };
    for (let k = 0; k < 50 && !/^(\d+) of \1 /.test(await verdict()); k++) await page.waitForTimeout(100);
    expect(await verdict()).toMatch(/^(\d{2,}) of \1 /);
  });
});
