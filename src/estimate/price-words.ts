import { kickBoards, postSizes, railStocks } from "./post-choices";
import { priceKinds, type PriceKind } from "./price-kinds";

/** A text as words are compared: small letters, no accents, no signs but those of sizes. */
export const plainWords = (text: string): string =>
  text
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/[\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, "")
    .replace(/[_,;:()]+/g, " ")
    .replace(/\s+/g, " ")
    .trim();

/** What a column of a table of prices can hold. */
export type TableColumn = "item" | "size" | "unit" | "price" | "waste" | "taxed" | "supplier" | "date";

/** The words that head each column, in English and Spanish. */
const headers: Record<TableColumn, string> = {
  item: "item|description|product|material|articulo|descripcion|producto",
  size: "size|length|medida|tamano|largo|longitud",
  unit: "unit|uom|u/m|unidad",
  price: "price|unit price|price each|cost|unit cost|precio|precio unitario|costo|costo unitario",
  waste: "waste|waste %|waste percent|desperdicio|desperdicio %|merma|merma %",
  taxed: "tax|taxed|taxable|impuesto|con impuesto|gravado",
  supplier: "supplier|vendor|seller|proveedor|vendedor",
  date: "date|price date|quoted|as of|fecha|fecha del precio",
};

/** The column that a header names, if it names one. */
export function columnNamed(header: string): TableColumn | undefined {
  const found = Object.entries(headers).find(([, words]) => words.split("|").includes(plainWords(header)));
  return found?.[0] as TableColumn | undefined;
}

/** What each kind of item is also called; a post and a rail are called by their size as well. */
const alsoCalled: Partial<Record<PriceKind, string>> = {
  panel: "panel|panels|round pen panel|corral panel|panel de corral",
  gate: "gate in frame|framed gate|gate panel|bow gate|puerta con marco",
  hung_gate: "gate leaf|hung gate|swing gate|hoja de puerta|puerta para colgar",
  hinge_set: "hinge set|hinge|hinges|gate hinges|juego de bisagras|bisagra|bisagras",
  latch: "latch|gate latch|pestillo|picaporte|cerrojo",
  drop_rod: "drop rod|cane bolt|pasador de piso",
  fastener: "screw|screws|fastener|fasteners|tornillo|tornillos",
  nail: "nail|nails|clavo|clavos",
  bolt: "bolt|bolts|carriage bolt|carriage bolts|perno|pernos",
  hole: "hole|holes augered|augered hole|hoyo|perforacion",
  drive: "driven post|posts driven|poste hincado",
  bag: "concrete|bag concrete|bags of concrete|concrete bag|concrete mix|concreto|bolsa de concreto|saco de concreto",
  stone: "stone|gravel|crushed rock|grava|piedra triturada",
  sand_ton: "sand by ton|sand ton|arena por tonelada",
  sand_yard: "sand by yard|sand yard|sand by the yard|arena por yarda",
  base_ton: "base by ton|base ton|base rock by ton|road base by ton|base por tonelada",
  base_yard: "base by yard|base yard|base by the yard|road base by yard|base por yarda",
  fabric: "fabric|geotextile|road cloth|geotextil",
  haul: "haul|hauling|truck load|load hauled|acarreo|flete|viaje de camion",
  stake: "stake|stakes|layout stakes|estaca|estacas",
  line: "string line|mason line|masons line|hilo|hilo de albanil",
  paint: "paint|marking paint white|pintura|pintura para marcar",
};

const sized = (word: string, spanish: string, sizes: string[]) =>
  sizes.map((size): [string, string[]] => [
    `${word} ${size}`,
    [`${word} ${size}`, `${size} ${word}`, `${spanish} ${size}`, size],
  ]);

/** Every name of every kind as plain words, the longest first, so that the more exact name is found before its part. */
const names: [name: string, kind: PriceKind][] = Object.entries(priceKinds)
  .flatMap(([kind, { name }]): [string, PriceKind][] => {
    const extra = [
      ...sized("post", "poste", Object.keys(postSizes)),
      ...sized("rail", "riel", Object.keys(railStocks)),
      ...kickBoards.map((size): [string, string[]] => [
        `kick ${size}`,
        [`kick board ${size}`, `${size} kick board`, `tabla al pie ${size}`],
      ]),
    ].find(([key]) => key === kind)?.[1];
    const others = alsoCalled[kind as PriceKind]?.split("|") ?? extra ?? [];
    return [kind.replace("_", " "), name, ...others].map((one) => [plainWords(one), kind as PriceKind]);
  })
  .sort(([one], [other]) => other.length - one.length);

/**
 * The kind of item that a text names, and what is left of the text beside the name: mostly its size. Undefined where it
 * names none.
 */
export function kindNamed(text: string): { kind: PriceKind; rest: string } | undefined {
  const plain = ` ${plainWords(text)} `;
  const found = names.find(([name]) => plain.includes(` ${name} `));
  return found && { kind: found[1], rest: plain.replace(` ${found[0]} `, " ").trim() };
}
