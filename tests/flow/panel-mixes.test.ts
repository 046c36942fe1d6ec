import { type Page } from "playwright-core";
import { newJob, type Job } from "../../src/estimate/job";
import { panelMixes } from "../../src/estimate/panel-mixes";
import { examplePrices } from "../../src/estimate/prices";
import { describeInBrowser, forOneUser } from "../hosts/browser/page";
import { money } from "../../taskpane/shown";

const job = { ...newJob(), size: 72, gate_1: 10, panel_2: 10 } as Job;

describeInBrowser("the best mixes of panels in the panel", () => {
  let page: Page;
  forOneUser(async (opened) => {
    page = opened;
    await page.getByRole("button", { name: "New job" }).click();
    await page.fill("#penstake-size", "72");
    await page.fill("#penstake-gate_1", "10'");
    await page.getByRole("button", { name: "Add another length" }).click();
    await page.fill("#penstake-panel_2", "10");
  });

  /** Until the mixes are those of what was answered last. */
  const settled = () => page.locator('#penstake-mixes [aria-busy="false"]').waitFor();
  const uses = () => page.locator("#penstake-mixes .mixes button");

  test("each with its price, one of them in use, and others put in use and given back", async () => {
    expect(await page.locator("#penstake-mixes li").count()).toBe(0);
    await page.getByText("Best mixes of panels").click();
    await settled();
    const { best, fewer, more } = panelMixes(job, examplePrices);
    const told = await page.locator("#penstake-mixes .price strong").allTextContents();
    expect(told).toEqual([...best, fewer!, more!].map(({ price }) => money(Number(price))));
    const back = page.getByRole("button", { name: "Back to the best" });
    expect([await back.isDisabled(), await uses().first().isDisabled()]).toEqual([true, true]);
    await uses().nth(1).click();
    await settled();
    expect(
      await uses()
        .allTextContents()
        .then((all) => all.map((one) => one.trim())),
    ).toEqual(["Use this", "In use now", "Use this", "Use this", "Use this"]);
    expect(await page.inputValue("#penstake-panel_1_use")).toBe(String(best[1].answers.panel_1_use));
    await back.click();
    await settled();
    expect(await page.inputValue("#penstake-panel_1_use")).toBe("");
    expect(await uses().first().isDisabled()).toBe(true);
  });

  test("say in the panel why nothing closes", async () => {
    await page.fill("#penstake-size", "9");
    await page.fill("#penstake-gate_1", "40");
    await page.locator("#penstake-mixes .refusal").waitFor();
    expect(await page.locator("#penstake-mixes .refusal").textContent()).toMatch(/gates? alone/i);
    expect(await page.locator(".answer .refusal").first().textContent()).toMatch(/gates? alone/i);
  });
});
