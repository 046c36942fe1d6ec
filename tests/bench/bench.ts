import { bundleRows } from "./bundles";
import { documentRows } from "./documents";
import { functionRows } from "./functions";
import { layoutRows } from "./layouts";
import { report } from "./measure";
import { withPainter } from "./painter";
import { workbookRows } from "./workbook";

/** Prints what the project takes beside a peer of the same run, and every bar that is missed. */
async function bench(): Promise<void> {
  report([
    ...(await functionRows()),
    ...layoutRows(),
    ...(await withPainter(async (paint) => [...(await workbookRows(paint)), ...(await documentRows(paint))])),
    ...bundleRows(),
  ]);
}

void bench();
