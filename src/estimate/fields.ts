/** A text in the two languages of the job sites: American English and Spanish. */
export interface Label {
  en: string;
  es: string;
}

/** One of those languages. */
export type Language = keyof Label;

/** The groups that fields stand in, in the order of the estimate sheet. */
export type Section =
  "job" | "pen" | "layout" | "fence" | "gates" | "footing" | "hauling" | "supplies" | "charges";

/** The documents that can show a field. */
export type DocumentKind = "estimate" | "bid" | "price request" | "layout sheet";

/** What a field holds: a length in its unit, another number, a whole count, money, one of some words, or any text. */
export type FieldKind = "length" | "number" | "count" | "money" | "choice" | "text";

/** What a field's cell may hold; null is a blank. */
export type FieldValue = number | string | null;

/** One field of a job. Lengths are numbers in `unit`; percentages are whole percents (5 is 5 %). */
export interface Field {
  key: string;
  label: Label;
  unit: string;
  kind: FieldKind;
  default: FieldValue;
  /** Least and most that a number may be. */
  range?: readonly [number, number];
  options?: readonly string[];
  section: Section;
  /** Asked in the quick estimate; the others stand behind "more". */
  quick: boolean;
  /** The list of slots this field is one of, and its place in it from 1. */
  slot?: { list: SlotList; place: number };
  /** The line of the takeoff that this field belongs to, where that is not the slot of its own key. */
  beside?: string;
  /** The key of the figure that this field, when filled in, takes the place of. */
  insteadOf?: string;
  documents: readonly DocumentKind[];
}

/** The lists of like fields with a fixed number of places. */
export type SlotList = "panel" | "gate" | "truck";

/** How many places each list has. */
export const slots: Record<SlotList, number> = { panel: 6, gate: 4, truck: 4 };

/** What the size asked for means, and with it how the whole panels are fitted to it. */
export const sizeMeanings = ["pin circle", "inside clear", "outside"] as const;

/** What a pen can be for. */
export const purposes = ["ground work", "riding", "starting rank horses", "cattle"] as const;

/** How the pit sells its sand. */
export const sandUnits = ["ton", "cu yd"] as const;

/** What the profit's percentage is of: of the cost (markup) or of the price (margin). */
export const profitKinds = ["markup", "margin"] as const;

/** The languages that a crew's documents can be written in. */
export const languages = { English: "en", Spanish: "es" } as const satisfies Record<string, Language>;

/** What bearings are counted from: a north that the crew picked, the compass needle's, or the map's. */
export const norths = ["site", "magnetic", "true"] as const;
export type North = (typeof norths)[number];

/** The side of a gate's hinges as seen from outside, facing the pen. */
export const hands = ["right", "left"] as const;
export type Hand = (typeof hands)[number];

const everywhere = ["estimate", "bid", "price request", "layout sheet"] as const;
const inHouse = ["estimate"] as const;
const onLayout = ["estimate", "layout sheet"] as const;

type Draft = Omit<Field, "label" | "documents" | "default" | "quick" | "unit"> &
  Partial<Pick<Field, "default" | "quick" | "unit" | "documents">>;

function field(en: string, es: string, draft: Draft): Field {
  return { unit: "", default: null, quick: false, documents: inHouse, ...draft, label: { en, es } };
}

/** The places of one list: each a field of its own, keyed `panel_1`, `panel_2`, …. */
function inSlots(
  list: SlotList,
  en: string,
  es: string,
  draft: Omit<Draft, "key">,
  first: Partial<Field>,
): Field[] {
  return Array.from({ length: slots[list] }, (_, k) => ({
    ...field(`${en} ${k + 1}`, `${es} ${k + 1}`, { ...draft, key: `${list}_${k + 1}` }),
    slot: { list, place: k + 1 },
    ...(k === 0 ? first : {}),
  }));
}

/** The count that the user sets in the place of a computed one. */
function instead(key: string, en: string, es: string, section: Section): Field {
  return field(`${en}: use instead`, `${es}: usar en su lugar`, {
    key: `${key}_use`,
    kind: "count",
    range: [0, 10_000],
    section,
    insteadOf: `${key}_count`,
  });
}

const insteadOfSlots = (list: SlotList, en: string, es: string, section: Section) =>
  Array.from({ length: slots[list] }, (_, k) =>
    instead(`${list}_${k + 1}`, `${en} ${k + 1}`, `${es} ${k + 1}`, section),
  );

const percent = (key: string, en: string, es: string, section: Section, most: number, value: number | null) =>
  field(en, es, { key, kind: "number", unit: "%", range: [0, most], default: value, section });

/**
 * The one list of a job's fields. Panel controls, keys in sheets, validation, template fields and help derive from
 * it; nothing else lists them.
 */
export const fields: readonly Field[] = [
  field("Job", "Trabajo", { key: "job_name", kind: "text", section: "job", documents: everywhere }),
  field("Customer", "Cliente", {
    key: "customer",
    kind: "text",
    section: "job",
    documents: ["estimate", "bid"],
  }),
  field("Site", "Lugar", { key: "site", kind: "text", section: "job", documents: everywhere }),
  field("What the pen is for", "Para qué es el corral", {
    key: "purpose", kind: "choice", options: purposes, default: "riding", section: "pen", quick: true, documents: ["estimate", "bid"],
  }), // prettier-ignore
  field("Size across", "Tamaño (diámetro)", {
    key: "size", kind: "length", unit: "ft", range: [8, 500], default: 66, section: "pen", quick: true, documents: everywhere,
  }), // prettier-ignore
  field("The size means", "El tamaño significa", {
    key: "size_means", kind: "choice", options: sizeMeanings, default: "pin circle", section: "pen", quick: true,
  }), // prettier-ignore
  field("Pin gap, each joint", "Holgura por pasador", {
    key: "pin_gap", kind: "length", unit: "in", range: [-6, 6], default: 0, section: "pen",
  }), // prettier-ignore
  field("Budget", "Presupuesto", {
    key: "budget", kind: "money", unit: "$", range: [0, 10_000_000], section: "pen", quick: true,
  }), // prettier-ignore
  field("Bearing of the first gate's middle", "Rumbo al centro de la primera puerta", {
    key: "gate_bearing", kind: "number", unit: "°", range: [0, 360], default: 180, section: "layout", documents: onLayout,
  }), // prettier-ignore
  field("Bearings are from north", "Los rumbos son desde el norte", {
    key: "north", kind: "choice", options: norths, default: "site", section: "layout", documents: onLayout,
  }), // prettier-ignore
  field("Gate hinges, seen from outside", "Bisagras, vistas desde afuera", {
    key: "gate_hand", kind: "choice", options: hands, default: "right", section: "layout", documents: onLayout,
  }), // prettier-ignore
  field("Language of the layout sheet", "Idioma de la hoja de trazo", {
    key: "language", kind: "choice", options: Object.keys(languages), default: "English", section: "layout", documents: onLayout,
  }), // prettier-ignore
  ...inSlots("panel", "Panel length", "Largo de panel", {
    kind: "length", unit: "ft", range: [1, 40], section: "fence", documents: everywhere,
  }, { default: 12, quick: true }), // prettier-ignore
  ...insteadOfSlots("panel", "Panels of length", "Paneles de largo", "fence"),
  ...inSlots("gate", "Gate frame, pin to pin,", "Marco de puerta, entre pasadores,", {
    kind: "length", unit: "ft", range: [1, 40], section: "gates", documents: everywhere,
  }, { default: 8, quick: true }), // prettier-ignore
  field("Footing depth", "Profundidad de arena", {
    key: "depth", kind: "length", unit: "in", range: [0, 24], default: 3, section: "footing", quick: true, documents: everywhere,
  }), // prettier-ignore
  percent("overrun", "Overrun beyond the figure", "Excedente", "footing", 100, 0),
  percent("settle", "Settle, loose to settled", "Asentamiento", "footing", 60, 0),
  field("Sand is sold by the", "La arena se vende por", {
    key: "sand_unit", kind: "choice", options: sandUnits, default: "ton", section: "footing",
  }), // prettier-ignore
  field("Sand weighs", "Peso de la arena", {
    key: "tons_per_cy", kind: "number", unit: "tons/cu yd", range: [0.5, 3], default: 1.35, section: "footing",
  }), // prettier-ignore
  ...inSlots("truck", "Truck that reaches the pen", "Camión que llega al corral", {
    kind: "number", unit: "cu yd", range: [0.1, 60], section: "hauling", documents: ["estimate", "price request"],
  }, { default: 16, quick: true }), // prettier-ignore
  ...insteadOfSlots("truck", "Loads of truck", "Viajes del camión", "hauling"),
  percent("short", "May come short by", "Puede faltar hasta", "hauling", 50, 5),
  field("Mason's line on a roll", "Hilo por rollo", {
    key: "line_roll", beside: "line", kind: "length", unit: "ft", range: [10, 5000], default: 250, section: "supplies",
  }), // prettier-ignore
  field("A paint can marks", "Una lata marca", {
    key: "paint_reach", beside: "paint", kind: "length", unit: "ft", range: [10, 5000], default: 250, section: "supplies",
  }), // prettier-ignore
  instead("stakes", "Stakes", "Estacas", "supplies"),
  instead("line", "Rolls of line", "Rollos de hilo", "supplies"),
  instead("paint", "Cans of paint", "Latas de pintura", "supplies"),
  percent("tax", "Tax, of the taxed lines", "Impuesto, de lo gravado", "charges", 30, 0),
  percent("contingency", "Contingency, of lines and tax", "Imprevistos", "charges", 100, 0),
  percent("overhead", "Overhead, of all above it", "Gastos generales", "charges", 100, 10),
  percent("profit", "Profit", "Ganancia", "charges", 95, 15),
  field("The profit is a", "La ganancia es", {
    key: "profit_kind", kind: "choice", options: profitKinds, default: "markup", section: "charges",
  }), // prettier-ignore
];

const byKey = new Map(fields.map((one) => [one.key, one]));

/** The field of that key; throws where there is none, since a key is never a user's input. */
export function fieldOf(key: string): Field {
  const found = byKey.get(key);
  if (!found) throw new Error(`No field ${key}.`);
  return found;
}

/** The keys of a list of slots in order: panel_1, panel_2, …. */
export const slotKeys = (list: SlotList) => Array.from({ length: slots[list] }, (_, k) => `${list}_${k + 1}`);
