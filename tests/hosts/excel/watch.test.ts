import { setTimeout as wait } from "node:timers/promises";
import { countingWorkbook } from "./stand-in";

/** The library's own category of a message that tells of an event, and its numbers for the four events. */
const eventCategory = 65536;
const events = { changed: 10, activated: 11, selectionChanged: 14, calculated: 16 };

const message = (messageType: number) => ({
  entries: [{ messageCategory: eventCategory, messageType, targetId: "Workbook", message: "{}" }],
});

async function watched() {
  const excel = countingWorkbook();
  let heard = 0;
  const stop = excel.host.watch(() => void heard++);
  await wait(20);
  const tell = (messageType: number) =>
    excel.model.OfficeExtension._testTriggerRichApiMessageEvent(message(messageType));
  return { excel, stop, tell, heard: () => heard };
}

describe("watching a workbook", () => {
  it("registers for all four events in one round trip", async () => {
    const { excel, stop } = await watched();
    expect(excel.trips()).toBe(1);
    stop();
  });

  it.each([
    ["another sheet is shown", events.activated],
    ["a cell is changed", events.changed],
    ["a result changes", events.calculated],
    ["another cell is selected", events.selectionChanged],
  ])("calls back when %s", async (_, event) => {
    const { stop, tell, heard } = await watched();
    tell(event);
    expect(heard()).toBe(0);
    await wait(250);
    expect(heard()).toBe(1);
    stop();
  });

  it("takes changes that follow each other closely as one", async () => {
    const { stop, tell, heard } = await watched();
    for (let k = 0; k < 5; k++) tell(events.changed);
    await wait(250);
    expect(heard()).toBe(1);
    stop();
  });

  it("calls back no more once it is stopped, not even for a change just before", async () => {
    const { excel, stop, tell, heard } = await watched();
    tell(events.changed);
    stop();
    tell(events.changed);
    await wait(250);
    expect(heard()).toBe(0);
    expect(excel.trips()).toBe(2);
  });

  it("tries again where Excel takes no handlers at first", async () => {
    const excel = countingWorkbook();
    let heard = 0;
    excel.fail({ request: 0, action: 2, code: "InvalidOperationInCellEditMode" });
    const stop = excel.host.watch(() => void heard++);
    await wait(2300);
    excel.model.OfficeExtension._testTriggerRichApiMessageEvent(message(events.changed));
    await wait(250);
    expect(heard).toBe(1);
    stop();
  });
});
