import { writtenAttributes, type Shape } from "../../src/drawing/shape";

/** A drawing as nodes of the page: made by name and text, so nothing in it is ever read as markup. */
export function svgNode(whole: Shape): SVGElement {
  const node = document.createElementNS("http://www.w3.org/2000/svg", whole.tag) as SVGElement;
  for (const [name, value] of writtenAttributes(whole)) if (name !== "xmlns") node.setAttribute(name, value);
  for (const child of whole.children) node.append(typeof child === "string" ? child : svgNode(child));
  return node;
}
