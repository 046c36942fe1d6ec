import { calls } from "./calls";
import { guides } from "./examples";
import { fenceCalls } from "./fence-calls";
import { formulaText, shownResult } from "./formula-text";
import { groundCalls } from "./ground-calls";
import { type Example } from "./guide";
import { layoutCalls, tableCalls } from "./layout-calls";
import { lengthCalls } from "./length-calls";
import { type FunctionMetadata, type Metadata, type ParameterMetadata } from "./metadata";
import { penCalls } from "./pen-calls";
import { shapeCalls } from "./shape-calls";

/** A page of the help, complete but for help.css beside it. */
export interface HelpPage {
  file: string;
  html: string;
}

const groups = [
  { title: "Circles and arenas", ids: Object.keys(shapeCalls) },
  { title: "Panel pens", ids: Object.keys({ ...penCalls, ...fenceCalls }) },
  { title: "Posts and stakes", ids: Object.keys(layoutCalls) },
  { title: "Footing, hauling and concrete", ids: Object.keys(groundCalls) },
  { title: "Feet and inches", ids: Object.keys(lengthCalls) },
];

const rules = [
  "Lengths are numbers in the unit of the argument's name, or texts with a unit: 60', 10' 6 1/2\", 18 m, 450 mm, 126 in. Over 0 to 5000 ft. A comma is a decimal comma; before exactly three digits it is refused.",
  'A blank cell, "" and 0 mean the same: an optional argument takes its default, a blank size in a range gives a blank result.',
  "Where an argument takes a range and the result has its shape, a bad cell gives its own error and leaves its neighbors alone.",
  "#VALUE! means that an input is not allowed, #N/A that nothing answers the question. Each says why: select the cell and point at its error sign.",
];

/** The help: one page a function named after its id, and an index. Examples are worked out by the functions themselves. */
export function helpPages({ functions }: Metadata): HelpPage[] {
  const pages = functions.map((one) => ({
    file: fileOf(one.id),
    html: page(`PEN.${one.id}`, functionPage(one, functions)),
  }));
  return [...pages, { file: "index.html", html: page("Penstake functions", indexPage(functions)) }];
}

const fileOf = (id: string) => `${id.toLowerCase()}.html`;

function functionPage(one: FunctionMetadata, functions: readonly FunctionMetadata[]): string {
  const guide = guides[one.id];
  const group = groups.find(({ ids }) => ids.includes(one.id))!;
  const others = functions.filter(({ id }) => id !== one.id && group.ids.includes(id));
  return `<nav aria-label="Help"><a href="index.html">All functions</a></nav>
<main>
<h1>PEN.${text(one.id)}</h1>
<p class="lead">${text(one.description)}</p>
<p class="syntax"><code>${text(syntax(one))}</code></p>
<h2>Arguments</h2>
<dl>${one.parameters.map(argument).join("")}</dl>
<h2>Result</h2>
<p>${text(resultOf(one))}</p>
<h2>Examples</h2>
<p class="note">The sizes are invented; the results are worked out by the function.</p>
${guide.examples.map((example) => exampleBlock(one.id, example)).join("\n")}
<h2>Where the rule comes from</h2>
<p>${text(guide.source)}</p>
${rulesBlock()}
<h2>More: ${text(group.title.toLowerCase())}</h2>
${list(others)}
</main>`;
}

function indexPage(functions: readonly FunctionMetadata[]): string {
  const sections = groups.map(
    ({ title, ids }) => `<h2>${text(title)}</h2>\n${list(functions.filter(({ id }) => ids.includes(id)))}`,
  );
  return `<main>
<h1>Penstake functions</h1>
<p class="lead">Worksheet functions for laying out, pricing and building round pens and riding arenas.</p>
${sections.join("\n")}
${rulesBlock()}
</main>`;
}

const rulesBlock = () =>
  `<h2>Rules for all functions</h2>\n<ul>${rules.map((rule) => `<li>${text(rule)}</li>`).join("")}</ul>`;

const list = (functions: readonly FunctionMetadata[]) =>
  `<ul class="functions">${functions.map((one) => `<li><a href="${fileOf(one.id)}">PEN.${text(one.id)}</a> ${text(one.description)}</li>`).join("")}</ul>`;

function syntax({ id, parameters }: FunctionMetadata): string {
  return `PEN.${id}(${parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ")})`;
}

function argument({ name, description, optional }: ParameterMetadata): string {
  const kind = optional ? "optional" : "needed";
  return `<div><dt><code>${text(name)}</code> <span class="${kind}">${kind}</span></dt><dd>${text(description)}</dd></div>`;
}

function resultOf({ id, result, parameters }: FunctionMetadata): string {
  if (id in tableCalls) return "A table: a header, and below it one row a stake.";
  if (result.dimensionality !== "matrix") return "One cell.";
  const [followed] = parameters.filter(({ dimensionality }) => dimensionality === "matrix");
  return `One cell, or a range with the shape of ${followed.name}.`;
}

function exampleBlock(id: string, { asks, terms }: Example): string {
  const result = calls[id](...terms);
  const rows = Array.isArray(result) ? result : [[result]];
  const cells = rows.map(
    (row) => `<tr>${row.map((cell) => `<td>${text(shownResult(cell))}</td>`).join("")}</tr>`,
  );
  return `<figure>
<figcaption>${text(asks)}</figcaption>
<code>${text(formulaText(id, terms))}</code>
<table aria-label="Result">${cells.join("")}</table>
</figure>`;
}

const POLICY = "default-src 'none'; style-src 'self'; img-src data:; base-uri 'none'; form-action 'none'";

function page(title: string, body: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${text(title)}</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="help.css">
</head>
<body>
${body}
</body>
</html>
`;
}

/** A text as HTML shows it. */
function text(plain: string): string {
  return plain.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
