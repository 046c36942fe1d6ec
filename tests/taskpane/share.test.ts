import { HostError } from "../../src/hosts/host";
import { readXlsx } from "../../src/hosts/xlsx/xlsx";
import { isPlainCopy, readEstimate } from "../../src/sheets/keyed";
import { carryOut, lookAhead, then } from "../../taskpane/share/change";
import { base64 } from "../../src/hosts/base64";
import { makePlainCopy } from "../../taskpane/share/copy";
import { FakeHost } from "./fake-host";
import { settled, written } from "./opened";

async function withSheet() {
  const host = new FakeHost();
  host.type("Sheet1", 0, 0, 50);
  host.type("Sheet1", 1, 0, "=PEN.AREA(A1)");
  host.type("Sheet1", 2, 0, "=PEN.CIRCUMFERENCE(A1)*2");
  host.asked = [];
  return host;
}
const says = (host: FakeHost, row: number) => host.sheet("Sheet1").cells.get(`${row},0`)?.says.kind;

describe("freezing a sheet", () => {
  it("shows what will change before anything does, then changes it in one step", async () => {
    const host = await withSheet();
    const change = await lookAhead(host, "freeze", true);
    expect([change.where, change.cells.length]).toEqual(['"Sheet1"', 3]);
    expect(change.cells.map(({ now }) => now)).toEqual(["=PEN.AREA(A1)", "=PEN.CIRCUMFERENCE(A1)*2", "50"]);
    expect(change.cells.map(then)).toEqual([expect.stringMatching(/^1963\.49/), expect.stringMatching(/^=157\.07\d*\*2$/), "stays, and is marked as fixed"]); // prettier-ignore
    expect(host.asked).not.toContain("rewrite");
    expect(await carryOut(host, change)).toMatch(/^3 cells of "Sheet1" changed/);
    expect(host.asked.filter((call) => call === "rewrite")).toHaveLength(1);
    expect([says(host, 1), says(host, 2)]).toEqual(["constant", "operation"]);
    expect([...host.sheet("Sheet1").fixed!]).toEqual(["0,0"]);
    host.type("Sheet1", 0, 0, 60);
    expect(host.value("Sheet1", 1, 0)).toBeCloseTo(1963.495);
  });

  it("keeps to the selection", async () => {
    const host = await withSheet();
    host.selected = { row: 1, column: 0 };
    const change = await lookAhead(host, "freeze", false);
    expect([change.where, change.cells.length]).toEqual(["'Sheet1'!A2", 2]);
    host.reach = { bottom: 3, right: 1 };
    expect((await lookAhead(host, "freeze", false)).where).toBe("'Sheet1'!A2:B4");
  });

  it("does nothing where the sheet has changed since it was shown", async () => {
    const host = await withSheet();
    const change = await lookAhead(host, "freeze", true);
    host.type("Sheet1", 0, 0, 60);
    await expect(carryOut(host, change)).rejects.toThrow("has changed since this was shown");
    expect(host.asked).not.toContain("rewrite");
  });

  it("makes a plain copy of an estimate, which the panel then offers to make live again", async () => {
    const { host, panel } = await written();
    const before = panel.figured.result!.figures.total;
    await carryOut(host, await lookAhead(host, "freeze", true));
    await settled();
    const [content] = await host.read(["Estimate"]);
    const sheet = readEstimate(content);
    expect(isPlainCopy(sheet, content.formulas)).toBe(true);
    expect(sheet.cells.total.value).toBeCloseTo(Number(before), 2);
    expect((await lookAhead(host, "freeze", true)).cells).toEqual([]);
  });
});

describe("repairing a sheet", () => {
  it("enters again what a file put a prefix before, and names functions it does not have", async () => {
    const host = await withSheet();
    const stored = ["Penstake.xlam!PEN.AREA(A1)", "_xldudf_PEN_UNHEARD(A1)"];
    for (const [k, text] of stored.entries())
      host
        .sheet("Sheet1")
        .cells.set(`${3 + k},0`, { row: 3 + k, column: 0, says: { kind: "verbatim", text } });
    const change = await lookAhead(host, "repair", true);
    expect(change.unknown).toEqual(["UNHEARD"]);
    expect(change.cells.map((cell) => [cell.now, then(cell)])[0]).toEqual(["=Penstake.xlam!PEN.AREA(A1)", "=PEN.AREA(A1)"]); // prettier-ignore
    await carryOut(host, change);
    expect(host.value("Sheet1", 3, 0)).toBeCloseTo(1963.495);
  });
});

describe("a plain copy", () => {
  const taken: [string, Uint8Array][] = [];
  const handOver = async (name: string, bytes: Uint8Array) => void taken.push([name, bytes]);

  it("holds the chosen sheets, and no formula of this add-in", async () => {
    const { host } = await written();
    expect(await makePlainCopy(host, { sheets: ["Estimate"], keepKeys: true }, handOver)).toMatch(/has 1 sheet/); // prettier-ignore
    const [[name, bytes]] = taken;
    expect(name).toMatch(/^Plain copy \d{4}-\d\d-\d\d\.xlsx$/);
    const { content } = await readXlsx(bytes);
    expect(content.sheets.map((sheet) => sheet.name)).toEqual(["Estimate"]);
    expect(JSON.stringify(content)).not.toMatch(/PEN\.|Prices!/);
    expect(base64(bytes)).toBe(Buffer.from(bytes).toString("base64"));
  });

  it("is refused without a sheet, and where someone would meet a #NAME? in it", async () => {
    const host = await withSheet();
    await expect(makePlainCopy(host, { sheets: [], keepKeys: true }, handOver)).rejects.toThrow(HostError);
    host.content = async () => ({
      sheets: [{ name: "Sheet1", cells: [{ row: 3, column: 0, value: { error: "#NAME?" } }], columns: [], hiddenRows: [], heights: {}, frozenRows: 0, merges: [], pictures: [] }],
    });
    await expect(makePlainCopy(host, { sheets: ["Sheet1"], keepKeys: true }, handOver)).rejects.toThrow("'Sheet1'!A4 would show #NAME?");
  });
}); // prettier-ignore
