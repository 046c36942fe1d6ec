import { html } from "lit/html.js";
import { openSection, toggleSection, type LazySection, type SectionBody } from "../../taskpane/sections";
import { type Context, type PageState } from "../../taskpane/views/context";

const body: SectionBody = { view: () => html`<p>there</p>` };

/** A context with a page only, and what it remembered of a section at each rendering. */
function page(section: LazySection) {
  const page: PageState = { opened: { panel: 1, gate: 0, leaf: 0, truck: 1 }, sections: {} };
  const seen: unknown[] = [];
  const context = { page, changed: () => void seen.push(page.sections[section.id]) } as unknown as Context;
  return { context, seen };
}

const section = (load: LazySection["load"]): LazySection => ({ id: "one", title: "One", hint: "", load });

describe("a section that is loaded when it is opened", () => {
  it("says so while it is fetched, then shows what came, and is fetched once", async () => {
    let fetched = 0;
    const one = section(() => Promise.resolve((fetched++, body)));
    const { context, seen } = page(one);
    await Promise.all([openSection(context, one), openSection(context, one)]);
    await openSection(context, one);
    expect(seen).toEqual(["loading", body]);
    expect(fetched).toBe(1);
  });

  it("says that it failed, and is fetched again when asked", async () => {
    let turn = 0;
    const one = section(() => (turn++ === 0 ? Promise.reject(new Error("offline")) : Promise.resolve(body)));
    const { context, seen } = page(one);
    await openSection(context, one);
    await openSection(context, one);
    expect(seen).toEqual(["loading", "failed", "loading", body]);
  });

  it("is remembered as open or closed, and shown anew when it opens again", async () => {
    const one = section(() => Promise.resolve(body));
    const { context, seen } = page(one);
    toggleSection(context, one, true);
    await new Promise((resolve) => setTimeout(resolve));
    expect([context.page.open, seen]).toEqual([{ one: true }, ["loading", body]]);
    toggleSection(context, one, false);
    expect([context.page.open, seen.length]).toEqual([{ one: false }, 2]);
    toggleSection(context, one, true);
    expect([context.page.open, seen.length]).toEqual([{ one: true }, 3]);
  });
});
