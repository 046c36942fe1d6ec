import { writeXlsx } from "../../src/hosts/xlsx/xlsx";
import { addFromFile, fillCopy, filledNow, insertField } from "../../taskpane/templates/template-command";
import { cell, sheet } from "../hosts/xlsx/book";
import { opened, settled, written } from "./opened";

/** A workbook with an estimate and a template of the user's, selected. */
async function withTemplate(...texts: string[]) {
  const all = await written();
  all.host.sheets.push({ name: "My letter", cells: new Map() });
  texts.forEach((text, row) => all.host.type("My letter", row, 1, text));
  all.host.activate("My letter");
  await settled();
  return all;
}

describe("a template of the user's", () => {
  it("is filled in a copy that follows the estimate; the template stays as it is", async () => {
    const { host, panel, cell } = await withTemplate("Pen of {size} with {panels} panels", "{total}", "Plain words");
    await panel.run(() => fillCopy(panel, host));
    expect(panel.notice?.text).toMatch(/^Written to My letter filled: 2 cells point/);
    expect(host.value("My letter filled", 0, 1)).toBe("Pen of 72 with 18 panels");
    expect(host.value("My letter filled", 2, 1)).toBe("Plain words");
    expect(host.value("My letter", 0, 1)).toBe("Pen of {size} with {panels} panels");
    const { row, column } = cell("size");
    host.type("Estimate", row, column, 60);
    expect(host.value("My letter filled", 0, 1)).toMatch(/^Pen of 60 with 1\d panels$/);
    expect(host.value("My letter filled", 1, 1)).toBe(host.value("Estimate", cell("total").row, cell("total").column));
  }); // prettier-ignore

  it("takes each field from the estimate that its braces name", async () => {
    const { host, panel } = await withTemplate("{Estimate 2: size}", "{size}");
    host.activate("Estimate");
    await settled();
    panel.answer({ size: 50 });
    await panel.write();
    await settled();
    host.activate("My letter");
    await settled();
    await panel.run(() => fillCopy(panel, host));
    expect(host.value("My letter filled", 0, 1)).toBe(50);
    expect(host.value("My letter filled", 1, 1)).toBe(50);
  });

  it("says which cells name something unknown, and leaves their braces", async () => {
    const { host, panel } = await withTemplate("{totl}", "{Estimate 7: total}", "{size}");
    expect((await filledNow(panel, host)).unfilled.map(({ sentence }) => sentence)).toEqual([
      "B1: No field is called {totl}. Nearest: {total}.",
      "B2: This workbook has no estimate called Estimate 7.",
    ]);
    await panel.run(() => fillCopy(panel, host));
    expect(panel.notice?.text).toMatch(
      /2 cells keep their braces\. B1: No field is called \{totl\}\. Nearest: \{total\}\. B2: /,
    );
    expect(host.value("My letter filled", 0, 1)).toBe("{totl}");
  });

  it("is refused where nothing can be filled, and nothing is written", async () => {
    const { host, panel } = await withTemplate("No braces here");
    await panel.run(() => fillCopy(panel, host));
    expect(panel.notice).toEqual({
      kind: "refused",
      text: expect.stringMatching(/^My letter names no field/),
    });
    expect(host.sheets.map(({ name }) => name)).not.toContain("My letter filled");
  });

  it("keeps what it says when the workbook refuses the copy", async () => {
    const { host, panel } = await withTemplate("{size}");
    host.failing = "fillCopy";
    await panel.run(() => fillCopy(panel, host));
    expect(panel.notice?.kind).toBe("refused");
    expect(host.sheets.map(({ name }) => name)).not.toContain("My letter filled");
    expect(host.value("My letter", 0, 1)).toBe("{size}");
  });
});

describe("a field put into the selected cell", () => {
  it("stands there in braces, as text", async () => {
    const { host, panel } = await withTemplate("words");
    host.selected = { row: 3, column: 2 };
    await panel.run(() => insertField(panel, host, "{total}"));
    expect(host.value("My letter", 3, 2)).toBe("{total}");
    expect(panel.notice?.text).toBe("{total} stands in 'My letter'!C4.");
  });

  it("is refused where the cell holds something", async () => {
    const { host, panel } = await withTemplate("words");
    host.selected = { row: 0, column: 1 };
    await panel.run(() => insertField(panel, host, "{total}"));
    expect(panel.notice?.text).toMatch(/^'My letter'!B1 holds something/);
    expect(host.value("My letter", 0, 1)).toBe("words");
  });

  it("needs no estimate", async () => {
    const { host, panel } = await opened();
    await panel.run(() => insertField(panel, host, "{total}"));
    expect(host.value("Sheet1", 0, 0)).toBe("{total}");
  });
});

describe("a template from a file", () => {
  const fileOf = async (...sheets: ReturnType<typeof sheet>[]) =>
    new File([(await writeXlsx({ sheets })) as Uint8Array<ArrayBuffer>], "letters.xlsx");

  it("comes in under a free name, is shown, and is filled from the estimate; its own formulas follow", async () => {
    const { host, panel } = await withTemplate("mine");
    const rate = sheet("Rates", [cell(0, 0, 3)]);
    const letter = sheet("My letter", [cell(0, 0, "{size} ft"), cell(1, 0, 6, { formula: "=Rates!A1*2" }), cell(2, 0, "=1+1")]); // prettier-ignore
    const file = await fileOf(letter, rate);
    await panel.run(() => addFromFile(panel, host, file));
    expect(panel.notice?.text).toMatch(/^Added: My letter 2, Rates. My letter 2 is shown./);
    expect(host.value("My letter", 0, 1)).toBe("mine");
    host.type("Rates", 0, 0, 5);
    expect(host.value("My letter 2", 1, 0)).toBe(10);
    expect(panel.state.view?.active.name).toBe("My letter 2");
    await panel.run(() => fillCopy(panel, host));
    expect(host.value("My letter 2 filled", 0, 0)).toBe("72 ft");
  });

  it("is refused in a sentence where the file is broken, of another kind or too large, and the workbook stays", async () => {
    const { host, panel } = await withTemplate("mine");
    const before = JSON.stringify(host.sheets.map(({ name, cells }) => [name, [...cells]]));
    const tries: [File, RegExp][] = [
      [new File(["hello"], "a.xlsx"), /^This file is no \.xlsx workbook/],
      [new File(["PK\u0003\u0004 broken"], "a.xlsx"), /^This workbook is damaged/],
      [new File(["a,b"], "prices.csv"), /^prices\.csv is no \.xlsx file/],
      [new File([new Uint8Array(4 * 2 ** 20)], "big.xlsx"), /^big\.xlsx is larger than 3\.5 MB/],
    ];
    for (const [file, sentence] of tries) {
      await panel.run(() => addFromFile(panel, host, file));
      expect(panel.notice).toEqual({ kind: "refused", text: expect.stringMatching(sentence) as string });
    }
    expect(JSON.stringify(host.sheets.map(({ name, cells }) => [name, [...cells]]))).toBe(before);
  });
});
