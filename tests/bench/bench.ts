import { bundleRows } from "./bundles";
import { functionRows } from "./functions";
import { report } from "./measure";
import { workbookRows } from "./workbook";

/** Prints what the project takes beside a peer of the same run, and every bar that is missed. */
async function bench(): Promise<void> {
  report([...(await functionRows()), ...(await workbookRows()), ...bundleRows()]);
}

void bench();
