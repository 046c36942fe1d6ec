/**
 * One element of a drawing as plain data. The drawing is made once; a sheet takes it as text (svgText) and the panel as
 * nodes of its page, so nothing is ever parsed as markup there and the two cannot part.
 */
export interface Shape {
  tag: string;
  attributes: Record<string, string | number>;
  children: (Shape | string)[];
}

/** An element with its attributes and what is in it. */
export const shape = (
  tag: string,
  attributes: Shape["attributes"] = {},
  ...children: Shape["children"]
): Shape => ({ tag, attributes, children });

const entities: Record<string, string> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&apos;",
};

const escaped = (text: string) => text.replace(/[&<>"']/g, (sign) => entities[sign]);

/** A number as a drawing writes it: to the hundredth of a unit. */
const written = (value: string | number) =>
  typeof value === "number" ? String(Math.round(value * 100) / 100 + 0) : value;

/** The attributes of a shape as they are written, in order. */
export const writtenAttributes = ({ attributes }: Shape): [string, string][] =>
  Object.entries(attributes).map(([name, value]) => [name, written(value)]);

/** A shape as SVG text; every text and attribute in it is escaped. */
export function svgText(whole: Shape): string {
  const attributes = writtenAttributes(whole).map(([name, value]) => ` ${name}="${escaped(value)}"`);
  const inside = whole.children.map((child) => (typeof child === "string" ? escaped(child) : svgText(child)));
  return `<${whole.tag}${attributes.join("")}>${inside.join("")}</${whole.tag}>`;
}
