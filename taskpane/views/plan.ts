import { html, nothing, type TemplateResult } from "lit/html.js";
import { type Pen } from "../../src/estimate/pen";
import { planFrame } from "../../src/drawing/frame";
import { placedPieces } from "../../src/drawing/pieces";
import { planShape } from "../../src/drawing/plan";
import { type Context } from "./context";
import { svgNode } from "./svg-node";

const width = 318;

const say = {
  plan: "Plan of the pen. The arrow keys name one piece after the other.",
  point: "Gates are drawn double. Point at a piece to name it.",
};

let drawn: { pen: Pen; node: SVGElement; names: string[] } | undefined;

/** The drawing of a pen, made once for as long as the pen stays the same. */
function drawingOf(pen: Pen) {
  if (drawn?.pen !== pen) {
    const colors = { ink: "var(--pen-ink)", faint: "var(--pen-faint)", paper: "var(--pen-paper)" };
    const names = placedPieces(pen, planFrame(width)).map(({ name }) => name);
    drawn = { pen, node: svgNode(planShape(pen, { width, colors })), names };
  }
  return drawn;
}

/** The live plan; under it the name of the piece that is pointed at or reached with the arrow keys. */
export function view({ panel, page, changed }: Context): TemplateResult {
  const { result, old } = panel.figured;
  if (!result) return html`<div class="plan"></div>`;
  const { node, names } = drawingOf(result.made.pen);
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
    <p class="piece" role="status">${place === undefined ? say.point : (names[place] ?? nothing)}</p>`;
}
