import { html, nothing, type TemplateResult } from "lit/html.js";
import { offSizes } from "../../src/estimate/off-sizes";
import { byOtherOf } from "../../src/estimate/by-other";
import { planFrame } from "../../src/drawing/frame";
import { placedPieces } from "../../src/drawing/pieces";
import { planShape } from "../../src/drawing/plan";
import { type planSite } from "../plan-site";
import { type Result } from "../result";
import { unbroken } from "../shown";
import { type Context } from "./context";
import { svgNode } from "./svg-node";

const width = 318;

const say = {
  plan: "Plan of the pen. The arrow keys name one piece after the other.",
  between: (piece: string, from: number, to: number) => `${piece}: stake ${from} to ${to}`,
  point: "Gates are drawn double. Point at a piece to name it.",
};

interface Drawn {
  result: Result;
  around?: typeof planSite;
  node: SVGElement;
  names: string[];
  /** What was found on the site, in sentences. */
  notes: string[];
}

let drawn: Drawn | undefined;
let asked = false;

/** How the site around a pen is drawn; fetched once what is seen first is there. */
let around: typeof planSite | undefined;

/** The drawing of a result, made once for as long as that stays the same; with the site once its script is there. */
function drawingOf(result: Result, changed: () => void): Drawn {
  if (!around && !asked) {
    asked = true;
    void import("../plan-site").then((script) => {
      around = script.planSite;
      changed();
    });
  }
  if (drawn?.result === result && drawn.around === around) return drawn;
  const {
    job,
    made: { pen },
  } = result;
  const colors = { ink: "var(--pen-ink)", faint: "var(--pen-faint)", paper: "var(--pen-paper)" };
  const byOther = byOtherOf(job, pen);
  const { options, notes = [] } = around?.(job, pen) ?? {};
  const pieces = placedPieces(pen, planFrame(width), undefined, undefined, byOther?.pieces);
  const node = svgNode(planShape(pen, { width, colors, byOther, off: offSizes(job, pen), ...options }));
  drawn = {
    result,
    around,
    node,
    names: pieces.map(({ name }, k) => say.between(name, k + 1, ((k + 1) % pieces.length) + 1)),
    notes,
  };
  return drawn;
}

/** The live plan; under it the name of the piece that is pointed at or reached with the arrow keys. */
export function view({ panel, page, changed }: Context): TemplateResult {
  const { result, old } = panel.figured;
  if (!result) return html`<div class="plan"></div>`;
  const { node, names, notes } = drawingOf(result, changed);
  const place = page.piece !== undefined && page.piece < names.length ? page.piece : undefined;
  for (const piece of node.querySelectorAll("[data-piece]"))
    piece.classList.toggle("named", piece.getAttribute("data-piece") === String(place));
  const name = (piece: number | undefined) => {
    if (piece === page.piece) return;
    page.piece = piece;
    changed();
  };
  const step: Record<string, number> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };
  const keyed = (event: KeyboardEvent) => {
    if (event.key === "Escape") return name(undefined);
    if (!(event.key in step)) return;
    event.preventDefault();
    const from = place ?? (step[event.key] > 0 ? -1 : 0);
    name((from + step[event.key] + names.length) % names.length);
  };
  const pointed = ({ target }: Event) => {
    const piece = (target as Element).closest("[data-piece]")?.getAttribute("data-piece");
    name(piece ? Number(piece) : undefined);
  };
  return html`<div
      class="plan ${old ? "old" : ""}"
      tabindex="0"
      role="group"
      aria-label=${say.plan}
      @keydown=${keyed}
      @pointerover=${pointed}
      @pointerleave=${() => name(undefined)}
    >
      ${node}
    </div>
    <p class="piece" role="status">${place === undefined ? say.point : (names[place] ?? nothing)}</p>
    ${notes.map((note) => html`<p class="refusal">${unbroken(note)}</p>`)}`;
}
