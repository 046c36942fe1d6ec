import { existsSync } from "node:fs";
import { type Page } from "playwright-core";
import { executablePath, startPages, type Pages } from "./pages";

export { startPages, type Pages } from "./pages";

/** True where Chromium can be run. In CI its absence is a failure; elsewhere the checks say that they are skipped. */
function chromiumIsHere(): boolean {
  if (existsSync(executablePath)) return true;
  if (process.env.CI) throw new Error("chromium is missing, and CI needs it");
  console.log("skipped: no chromium");
  return false;
}

/** `describe`, where Chromium can be run. */
export const describeInBrowser = chromiumIsHere() ? describe : describe.skip;

/** A new user's page for all tests of a `describe`, set up once; whatever goes wrong in the page fails the test it comes up in. */
export function forOneUser(setUp: (page: Page) => unknown): void {
  let pages: Pages;
  beforeAll(async () => {
    pages = await startPages();
    await setUp(await pages.open(await pages.newUser()));
  });
  afterAll(() => pages?.close());
  afterEach(() => expect(pages.faults).toEqual([]));
}
