import { messages } from "../../../src/hosts/excel/messages";
import { refused } from "./outcomes";
import { countingWorkbook } from "./stand-in";

const codes: [string, string][] = [
  ["InvalidOperationInCellEditMode", messages.editing],
  ["ItemNotFound", messages.gone],
  ["InvalidSelection", messages.noCell],
  ["AccessDenied", messages.locked],
  ["RequestPayloadSizeLimitExceeded", messages.tooLarge],
  ["ResponsePayloadSizeLimitExceeded", messages.tooLarge],
  ["ApiNotFound", messages.tooOld],
];

describe("what Excel refuses", () => {
  it.each(codes)("is told in a sentence for %s", async (code, sentence) => {
    const excel = countingWorkbook();
    excel.fail({ request: 0, action: 1, code });
    expect(await refused(excel.host.show("Sheet1"))).toBe(sentence);
  });

  it("is told with Excel's own words and code where the code is a new one", async () => {
    const excel = countingWorkbook();
    excel.fail({ request: 0, action: 1, code: "Conflict" });
    expect(await refused(excel.host.show("Sheet1"))).toBe(messages.unknown("stand-in: Conflict (Conflict)"));
  });

  it("is told as silence where nothing answers", async () => {
    const excel = countingWorkbook();
    excel.fail({ request: 0, action: 0, code: "", silent: true });
    expect(await refused(excel.host.show("Sheet1"))).toBe(messages.silent);
  });

  it("always ends with what to do next", () => {
    const next = /(try again|open it again|Update Excel)[^.]*\.$/;
    for (const [, sentence] of codes) expect(sentence).toMatch(next);
    expect(messages.silent).toMatch(next);
    expect(messages.nameTaken("Bid")).toMatch(next);
  });
});

describe("a copy as a new workbook", () => {
  it("is handed to Excel as the file it is", async () => {
    const excel = countingWorkbook();
    expect(excel.host.can).toEqual({ openCopy: true, selfCheck: true });
    await excel.host.openCopy("UEsDBA==");
    expect(excel.book.opened).toEqual(["UEsDBA=="]);
  });

  it("is not offered where Excel is too old for it", () => {
    expect(countingWorkbook({ api: 7 }).host.can.openCopy).toBe(false);
  });

  it("is refused in a sentence", async () => {
    const excel = countingWorkbook();
    excel.fail({ request: 0, action: 2, code: "RequestPayloadSizeLimitExceeded" });
    expect(await refused(excel.host.openCopy("UEsDBA=="))).toBe(messages.tooLarge);
  });
});
