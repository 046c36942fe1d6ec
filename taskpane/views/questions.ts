import { html, nothing, type TemplateResult } from "lit/html.js";
import { fieldOf, fieldsOf, type Field, type SlotList } from "../../src/estimate/fields";
import { structureOf } from "../../src/estimate/job";
import { arenas, belongs, type Structure } from "../../src/estimate/structures";
import { suggestions } from "../../src/estimate/purposes";
import { placesInUse, without } from "../shown";
import { type Context } from "./context";
import { fieldId, fieldView, sentence } from "./field";
import { lazyPart, type LazyPart } from "../sections";

/** The plan is fetched once the questions stand on the page, so that those come first. */
const planPart: LazyPart = { id: "plan", load: () => import("./plan") };

/** So is what the answers lead to, with what figures them. */
const fencePart: LazyPart = { id: "fence", load: async () => (await import("./answers")).fenceAnswer };
const groundPart: LazyPart = { id: "ground", load: async () => (await import("./answers")).groundAnswer };

const say = {
  built: (arena: boolean) => (arena ? "The arena" : "The pen"),
  fence: {
    "panel pen": "Panels and gates",
    "post pen": "Posts, rails and gates",
    "panel arena": "Panels and gates",
    "post arena": "Posts, rails and gates",
  } as Record<Structure, string>,
  footing: "Base, footing and trucks",
  money: "Money",
  add: {
    panel: "Add another length",
    gate: "Add a gate",
    leaf: "Add a gate",
    truck: "Add a truck",
  } as Record<SlotList, string>,
  use: (size: number) => `Use ${size} ft`,
  suggested: (size: number, why: string) => `${size} ft: ${why}`,
  meaning: {
    "pin circle": "Through the pins: the circle you paint.",
    "inside clear": "What the horse has, at the very least.",
    "post circle": "Through the post centers: the circle you paint.",
    "post line": "Through the post centers: the line you string.",
    outside: "Nothing of the fence stands outside this size.",
    "crushed stone": "Packed round the posts in layers.",
    "tamped earth": "What came out goes back in, tamped in layers.",
    concrete: "Let it cure before a gate hangs on it.",
    driven: "No holes: a driver comes to the pen.",
  } as Record<string, string>,
  middle: "middle",
  old: "This is the last size that worked.",
};

const fenceSlots: Record<Structure, SlotList[]> = {
  "panel pen": ["panel", "gate"],
  "post pen": ["leaf"],
  "panel arena": ["panel", "gate"],
  "post arena": ["leaf"],
};

/** The questions of a quick estimate in the trade's order, each with what it leads to. */
export function questionsView(context: Context): TemplateResult {
  const { panel } = context;
  const { result, old, refusal } = panel.figured;
  const structure = structureOf(panel.state.good);
  const quick = fieldsOf(structure).filter((field) => field.quick && !field.slot);
  const of = (...sections: string[]) => quick.filter(({ section }) => sections.includes(section));
  const isMoney = ({ kind }: Field) => kind === "money";
  const one = (field: Field) => questionView(context, field);
  return html`
    <section>
      <h2>${say.built(belongs({ structures: arenas }, structure))}</h2>
      ${of("pen").filter((field) => !isMoney(field)).map((field) =>
        field.key === "purpose" ? html`${one(field)}${suggestionView(context)}` : one(field),
      )}
    </section>
    <section>
      <h2>${say.fence[structure]}</h2>
      ${of("fence", "holes").map(one)}${fenceSlots[structure].map((list) => slotsView(context, list))}
      <div class="answer ${old ? "old" : ""}" role="status">
        ${lazyPart(context, fencePart)}
        <p class="refusal">${refusal ? sentence(refusal) : old && result ? say.old : nothing}</p>
      </div>
      ${lazyPart(context, planPart)}
    </section>
    <section>
      <h2>${say.footing}</h2>
      ${of("base", "footing").map(one)}${slotsView(context, "truck")}
      <div class="answer ${old ? "old" : ""}" role="status">
        ${lazyPart(context, groundPart)}
      </div>
    </section>
    <section>
      <h2>${say.money}</h2>
      ${quick.filter(isMoney).map(one)}
    </section>
  `;
} // prettier-ignore

/** One field of the list with its answer. */
export function questionView(
  context: Context,
  field: Field,
  { hint, ...more }: { remove?(): void; hint?: string } = {},
): TemplateResult {
  const { panel } = context;
  const { answers, good, problems, source } = panel.state;
  const counted = field.insteadOf ? panel.counted(field.key) : "";
  return fieldView({
    field,
    answer: answers[field.key] ?? null,
    good: good[field.key],
    problem: problems[field.key],
    hint:
      field.insteadOf && counted !== ""
        ? `counted: ${counted}`
        : (hint ?? say.meaning[String(answers[field.key])]),
    placeholder: field.key.startsWith("gate_at_") ? say.middle : String(counted),
    missing: source?.sheet.missing.includes(field.key) ?? false,
    answered: (value) => panel.answer({ [field.key]: value }),
    ...more,
  });
}

function suggestionView({ panel }: Context): TemplateResult {
  const { good } = panel.state;
  const suggestion = suggestions[String(good.purpose)];
  const taken = suggestion && good.size === suggestion.size;
  return html`<div class="suggestion">
    <p>${suggestion ? say.suggested(suggestion.size, suggestion.why) : nothing}</p>
    <button
      type="button"
      ?disabled=${!suggestion || taken}
      @click=${() => suggestion && panel.answer({ size: suggestion.size })}
    >
      ${suggestion ? say.use(suggestion.size) : nothing}
    </button>
  </div>`;
}

function slotsView(context: Context, list: SlotList): TemplateResult {
  const { panel, page, changed } = context;
  const { answers } = panel.state;
  const asked = fieldsOf(structureOf(panel.state.good));
  const most = asked.filter(({ slot }) => slot?.list === list).length;
  const used = Math.min(most, Math.max(placesInUse(answers, list), page.opened[list]));
  const remove = (place: number) => () => {
    page.opened[list] = used - 1;
    panel.answer(without(panel.state.answers, list, place));
    changed(fieldId(`${list}-add`));
  };
  const add = () => {
    page.opened[list] = used + 1;
    changed(fieldId(`${list}_${used + 1}`));
  };
  const places = Array.from({ length: used }, (_, k) => k + 1);
  const isGate = list === "gate" || list === "leaf";
  const more = (place: number) => (isGate ? asked.filter(({ ofGate }) => ofGate === place) : []);
  return html`${places.map(
    (place) =>
      html`${questionView(context, fieldOf(`${list}_${place}`), {
        remove: used > 1 || isGate ? remove(place) : undefined,
      })}${more(place).map((field) => questionView(context, field))}`,
  )}
  ${
    most === 1
      ? nothing
      : html`<button
          type="button"
          class="add"
          id=${fieldId(`${list}-add`)}
          ?disabled=${used >= most}
          @click=${add}
        >
          ${say.add[list]}
        </button>`
  }`;
}
