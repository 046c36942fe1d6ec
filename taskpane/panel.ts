import { html, nothing, render } from "lit/html.js";
import { structureOf } from "../src/estimate/job";
import { belongs } from "../src/estimate/structures";
import { type WorkbookHost } from "../src/hosts/host";
import { commandsOf } from "./commands";
import { type Command } from "./command";
import { Controller } from "./controller";
import { layoutCommand } from "./layout-command";
import { lazySection, type LazySection } from "./sections";
import "./taskpane.css";
import { headView } from "./views/bars";
import { commandsView } from "./views/commands";
import { type Context, type PageState } from "./views/context";
import { moreView } from "./views/more";
import { questionsView } from "./views/questions";
import { totalsView } from "./views/totals";

/** The sections under the questions, in their order. */
const sections: readonly LazySection[] = [
  {
    id: "mixes",
    title: "Best mixes of panels",
    hint: "What closes the pen, and what it costs",
    structures: ["panel pen"],
    load: async () => (await import("./mixes/view")).mixesSection(),
  },
  {
    id: "layout",
    title: "Layout sheet for the crew",
    hint: "One row a stake, with the plan, to print",
    load: () => import("./views/layout"),
  },
  {
    id: "prices",
    title: "Prices from a list",
    hint: "Pasted or opened, with a preview",
    load: async () => (await import("./prices/section")).pricesSection(),
  },
  {
    id: "documents",
    title: "Documents",
    hint: "Compare, bid, request, order, settle up",
    load: async () => (await import("./documents/section")).documentsSection(),
  },
  {
    id: "templates",
    title: "Your own templates",
    hint: "Fields in braces, filled from an estimate",
    load: async () => (await import("./templates/view")).templatesSection(),
  },
  {
    id: "share",
    title: "Share and mend",
    hint: "Freeze, repair, plain copies",
    load: () => import("./views/share"),
  },
  {
    id: "put",
    title: "Put one answer into the selected cell",
    hint: "",
    load: () => import("./views/put"),
  },
];

/** Shows the panel in an element of a page, at work in a workbook. `more` are commands that only this page can do. */
export function mountPanel(root: HTMLElement, host: WorkbookHost, more: readonly Command[] = []): void {
  const commands = [...commandsOf(host), ...more];
  const page: PageState = { opened: { panel: 1, gate: 0, leaf: 0, truck: 1 }, sections: {} };
  const panel = new Controller(host, () => show());
  const context: Context = {
    panel,
    host,
    page,
    commands,
    layout: layoutCommand(panel, host),
    changed(focus) {
      show();
      if (focus) root.querySelector<HTMLElement>(`[id="${focus}"]`)?.focus();
    },
  };
  function show(): void {
    const structure = structureOf(panel.state.good);
    render(
      html`<div class="penstake-panel">
        ${headView(context)}
        <div class="body">
          ${questionsView(context)} ${moreView(context)}
          ${sections.map((section) => (belongs(section, structure) ? lazySection(context, section) : nothing))}
          ${commandsView(context)}
        </div>
        ${totalsView(context)}
      </div>`,
      root,
    );
  }
  show();
  panel.start();
}
