import path from "node:path";
import { startPages } from "../hosts/browser/pages";

const folder = path.resolve("tests/screenshots");

/** Makes the pictures of the README from the built browser workbook: a first estimate, as a new user writes it. */
async function screenshots(): Promise<void> {
  const pages = await startPages();
  try {
    const page = await pages.open(await pages.newUser());
    await page.setViewportSize({ width: 1400, height: 860 });
    await page.getByRole("button", { name: "New job" }).click();
    const answers = { size: "72", gate_1: "10'", truck_1: "16", depth: "3" };
    for (const [field, answer] of Object.entries(answers)) await page.fill(`#penstake-${field}`, answer);
    await page.click("#penstake-truck-add");
    await page.fill("#penstake-truck_2", "10");
    await page.click(".main");
    await page.getByText("Written on the new sheet").waitFor();
    await page.locator("#penstake-size").scrollIntoViewIfNeeded();
    await page.waitForTimeout(800);
    await page.screenshot({ path: path.join(folder, "first-estimate.png") });
  } finally {
    await pages.close();
  }
}

void screenshots();
