import { excelHost, type ExcelHost } from "./excel-host";
import { messages } from "./messages";

/** The oldest set of Excel's requests that the panel can do with. */
const floor = "1.14";

/**
 * Starts the panel once Excel is ready. Where it cannot start, `elsewhere` gets the sentence that says why: opened
 * outside Excel, in an Excel that is too old, or without the Office library.
 */
export function whenReady(start: (host: ExcelHost) => void, elsewhere: (sentence: string) => void): void {
  if (typeof Office === "undefined") {
    elsewhere(messages.noLibrary);
    return;
  }
  void Office.onReady(({ host }) => {
    if (host !== Office.HostType.Excel) elsewhere(messages.outside);
    else if (!Office.context.requirements.isSetSupported("ExcelApi", floor)) elsewhere(messages.oldExcel);
    else start(excelHost());
  });
}
