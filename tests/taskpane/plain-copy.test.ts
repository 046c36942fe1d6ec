import { isPlainCopy } from "../../src/sheets/keyed";
import { settled, written } from "./opened";

/** An estimate with a line of the user's own, turned into a plain copy: every cell holds what it shows. */
async function plain() {
  const all = await written();
  const { host, cell } = all;
  const item = cell("own_gates_1_item");
  host.type("Estimate", item.row, item.column, "Wider latch");
  host.type("Estimate", item.row, cell("own_gates_1_quantity").column, 2);
  host.type("Estimate", item.row, cell("own_gates_1_price").column, 12.5);
  await settled();
  const total = cell("total").value;
  const { active } = await host.look();
  for (const cell of host.sheet("Estimate").cells.values())
    cell.says = { kind: "constant", value: active.values[cell.row][cell.column] };
  host.type("Estimate", item.row, item.column, "Wider latch");
  await settled();
  return { ...all, total };
}

const isPlain = ({ panel }: Awaited<ReturnType<typeof plain>>) =>
  isPlainCopy(panel.state.source!.sheet, panel.state.source!.content.formulas);

describe("a plain copy of an estimate", () => {
  it("is told from a live one", async () => {
    const live = await written();
    expect(isPlainCopy(live.panel.state.source!.sheet, live.panel.state.source!.content.formulas)).toBe(
      false,
    );
    expect(isPlain(await plain())).toBe(true);
  });

  it("is made live again on a new sheet, lines of one's own and all, and stays as it is", async () => {
    const all = await plain();
    const { host, panel, line, cell, total } = all;
    const before = JSON.stringify([...host.sheet("Estimate").cells]);
    await panel.makeLive();
    await settled();
    expect(line()).toBe("Estimate 2");
    expect(isPlain(all)).toBe(false);
    expect(cell("own_gates_1_item").value).toBe("Wider latch");
    expect(cell("total").value).toBe(total);
    expect(JSON.stringify([...host.sheet("Estimate").cells])).toBe(before);
  });

  it("takes no changed answers, since its figures would not follow, and keeps them in the panel", async () => {
    const { host, panel, line } = await plain();
    const before = JSON.stringify([...host.sheet("Estimate").cells]);
    panel.answer({ depth: "5" });
    await panel.update();
    expect(panel.notice).toMatchObject({
      kind: "refused",
      text: expect.stringContaining("plain copy") as string,
    });
    expect(panel.state.good.depth).toBe(5);
    expect(line()).toBe("Estimate, changes not written");
    expect(JSON.stringify([...host.sheet("Estimate").cells])).toBe(before);
  });
});
