import { existsSync } from "node:fs";
import { executablePath } from "./pages";

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
