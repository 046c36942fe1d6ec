import { html, type TemplateResult } from "lit/html.js";
import { readSizes, sizesOffered } from "../../src/estimate/sizes-asked";
import { HostError } from "../../src/hosts/host";
import { comparePlan } from "../../src/sheets/documents/compare";
import { textEntry } from "../../src/sheets/documents/entries";
import { type EstimateSource } from "../../src/sheets/documents/source";
import { type SheetPlan } from "../../src/sheets/plan";
import { dayText } from "../day";
import { freeName } from "../names";
import { type Context } from "../views/context";
import { asked, type Book } from "./book";
import { type Desk } from "./desk";
import { Form } from "./form";
import { type DocumentBody } from "./list";

const say = {
  sheet: "Compare",
  write: "Write comparison",
  hint: "Three to eight sizes, separated by commas; of an arena length by width, such as 200 x 100.",
  one: "A comparison is of one estimate: tick just one.",
  written: (sheet: string) => `Written on the new sheet "${sheet}". Its prices are those of today; the budget stays live.`,
}; // prettier-ignore

const sizes = textEntry("sizes", "Sizes", "Tamaños");

/** The comparison of one estimate's sizes, as they were typed, under a free name. */
export function newComparison(
  { sheetNames, prices }: Book,
  sources: readonly EstimateSource[],
  typed: string,
  today = new Date(),
): SheetPlan {
  if (sources.length !== 1) throw new HostError(say.one);
  const [source] = sources;
  const name = freeName(say.sheet, sheetNames);
  return asked(() => comparePlan(source, prices, readSizes(typed, source.job), name, dayText(today)));
}

/** The comparison's part of the panel: the sizes, offered around the estimate's own, and the button that writes it. */
export function compareBody(): DocumentBody {
  let form: Form | undefined;
  let offeredFor: unknown;

  const write = (context: Context, desk: Desk) => async () => {
    const { host, panel } = context;
    const typed = String(form!.read().sizes ?? "");
    const { book, sources } = await desk.sources(context);
    const plan = newComparison(book, sources, typed);
    await host.write([plan]);
    panel.see(await host.look());
    return say.written(plan.name);
  };

  return {
    view(context, desk): TemplateResult {
      const { panel } = context;
      const { good } = panel.state;
      if (form === undefined || offeredFor !== good.structure)
        form = new Form([sizes], { sizes: sizesOffered(good) });
      offeredFor = good.structure;
      return html`${form.view(context)}
        <p class="beside">${say.hint}</p>
        <section class="commands">
          <button type="button" ?disabled=${panel.busy} @click=${() => void panel.run(write(context, desk))}>
            ${say.write}
          </button>
        </section>`;
    },
  };
}
