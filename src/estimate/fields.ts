import { fasteners } from "../fence/fasteners";
import { GATE_ROOM } from "../fence/hung-gate";
import { depthRules } from "../fence/post-depth";
import { sizeMeanings as postSizeMeanings } from "../fence/size-meaning";
import { TURNING_ROOM } from "../fence/turning-room";
import { BASE_STONE_TONS, DRY_SAND_TONS } from "../ground/weight";
import {
  days,
  everywhere,
  field,
  gateNumbers,
  hours,
  inSlots,
  instead,
  insteadOfSlots,
  onHandOfSlots,
  only,
  percent,
  slotKeys,
  type Field,
  type Language,
} from "./field";
import { kickBoards, postSizes, railStocks, settings } from "./post-choices";
import {
  arenas,
  belongs,
  panelFences,
  postFences,
  roundPens,
  structures,
  type Structure,
} from "./structures";

export * from "./field";

/** What the size asked for means, and with it how the whole panels are fitted to it. */
export const sizeMeanings = ["pin circle", "inside clear", "outside"] as const;

/** The same for an arena of posts. */
export const arenaSizeMeanings = ["inside clear", "post line", "outside"] as const;

/** The sides of an arena as seen from its near end, looking along its length: where gates stand. */
export const arenaSides = ["near end", "far end", "left side", "right side"] as const;
/** Whether more panels than are on hand may come into a pen. */
export const beyondStock = ["bought", "not used"] as const;

/** What a pen can be for. */
export const purposes = ["ground work", "riding", "starting rank horses", "cattle"] as const;

/** How pit and quarry sell sand and base stone. */
export const bulkUnits = ["ton", "cu yd"] as const;

/** Where road fabric is laid. */
export const fabricPlaces = ["none", "under base"] as const;

/** What the profit's percentage is of: of the cost (markup) or of the price (margin). */
export const profitKinds = ["markup", "margin"] as const;

/** What the sales tax is on: the taxed lines' cost, their share of the price, all of the price, or nothing. */
export const taxBases = ["material cost", "items sold", "whole price", "exempt"] as const;
export type TaxBase = (typeof taxBases)[number];

/** What the price is rounded to, in dollars, by the word that a job chooses. */
export const roundings = {
  cent: 0.01,
  dollar: 1,
  "10 dollars": 10,
  "50 dollars": 50,
  "100 dollars": 100,
} as const;
export type Rounding = keyof typeof roundings;

/** The languages that a crew's documents can be written in. */
export const languages = { English: "en", Spanish: "es" } as const satisfies Record<string, Language>;

/** What bearings are counted from: a north that the crew picked, the compass needle's, or the map's. */
export const norths = ["site", "magnetic", "true"] as const;
export type North = (typeof norths)[number];

/** How a gate's hinges and latch are bought. */
export const hardware = ["with the leaf", "bought apart"] as const;

/** Which way a gate's leaf opens. */
export const swings = ["in", "out"] as const;
export type Swing = (typeof swings)[number];

/** The side of a gate's hinges as seen from outside, facing the pen. */
export const hands = ["right", "left"] as const;
export type Hand = (typeof hands)[number];

const onLayout = ["estimate", "layout sheet"] as const;

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
  field("What is built", "Qué se construye", {
    key: "structure", kind: "choice", options: structures, default: "panel pen", section: "pen", quick: true, settled: true,
  }), // prettier-ignore
  ...only(roundPens,
    field("What the pen is for", "Para qué es el corral", {
      key: "purpose", kind: "choice", options: purposes, default: "riding", section: "pen", quick: true, documents: ["estimate", "bid"],
    }),
    field("Size across", "Tamaño (diámetro)", {
      key: "size", kind: "length", unit: "ft", range: [8, 500], default: 66, section: "pen", quick: true, decides: true, documents: everywhere,
    }),
  ), // prettier-ignore
  ...only(arenas,
    field("Length", "Largo", {
      key: "arena_length", kind: "length", unit: "ft", range: [8, 1000], default: 200, section: "pen", quick: true, decides: true, documents: everywhere,
    }),
    field("Width", "Ancho", {
      key: "arena_width", kind: "length", unit: "ft", range: [8, 1000], default: 100, section: "pen", quick: true, decides: true, documents: everywhere,
    }),
  ), // prettier-ignore
  ...only("panel pen",
    field("The size means", "El tamaño significa", {
      key: "size_means", kind: "choice", options: sizeMeanings, default: "pin circle", section: "pen", quick: true,
    }),
  ), // prettier-ignore
  ...only(panelFences,
    field("Pin gap, each joint", "Holgura por pasador", {
      key: "pin_gap", kind: "length", unit: "in", range: [-6, 6], default: 0, section: "pen", decides: true,
    }),
    ...only("panel pen",
      field("Panels are thick", "Grueso del panel", {
        key: "panel_thickness", kind: "length", unit: "in", range: [0, 6], default: 0, section: "pen",
      }),
    ),
  ), // prettier-ignore
  ...only("post pen",
    field("The size means", "El tamaño significa", {
      key: "post_size_means", kind: "choice", options: postSizeMeanings, default: "post circle", section: "pen", quick: true, decides: true,
    }),
  ), // prettier-ignore
  ...only("post arena",
    field("Corner radius, 0 is square", "Radio de esquina (0: a escuadra)", {
      key: "corner_radius", kind: "length", unit: "ft", range: [0, 1000], default: 0, section: "pen", quick: true, decides: true, documents: everywhere,
    }),
    field("The size means", "El tamaño significa", {
      key: "arena_size_means", kind: "choice", options: arenaSizeMeanings, default: "post line", section: "pen", quick: true, decides: true,
    }),
  ), // prettier-ignore
  ...only(postFences,
    field("Most from post to post", "Máximo entre postes", {
      key: "spacing", kind: "length", unit: "ft", range: [2, 20], default: 8, section: "pen", quick: true, decides: true, documents: everywhere,
    }),
  ), // prettier-ignore
  field("Budget", "Presupuesto", {
    key: "budget", kind: "money", unit: "$", range: [0, 10_000_000], section: "pen", quick: true,
  }), // prettier-ignore
  ...only(roundPens,
    field("Bearing of the first gate's middle", "Rumbo al centro de la primera puerta", {
      key: "gate_bearing", kind: "number", unit: "°", range: [0, 360], default: 180, section: "layout", documents: onLayout,
    }),
  ), // prettier-ignore
  ...only(arenas,
    field("Bearing of the length, near to far", "Rumbo del largo, hacia el fondo", {
      key: "length_bearing", kind: "number", unit: "°", range: [0, 360], default: 0, section: "layout", documents: onLayout,
    }),
  ), // prettier-ignore
  field("Bearings are from north", "Los rumbos son desde el norte", {
    key: "north", kind: "choice", options: norths, default: "site", section: "layout", documents: onLayout,
  }), // prettier-ignore
  field("Gate hinges, seen from outside", "Bisagras, vistas desde afuera", {
    key: "gate_hand", kind: "choice", options: hands, default: "right", section: "layout", documents: onLayout,
  }), // prettier-ignore
  field("The gates swing", "Las puertas abren hacia", {
    key: "gate_swing", kind: "choice", options: swings, default: "in", section: "layout", documents: onLayout,
  }), // prettier-ignore
  field("Language of the layout sheet", "Idioma de la hoja de trazo", {
    key: "language", kind: "choice", options: Object.keys(languages), default: "English", section: "layout", documents: onLayout,
  }), // prettier-ignore
  field("First gate's right post, east; north", "Poste derecho de la puerta, este; norte", {
    key: "gate_right", kind: "numbers", unit: "ft", range: [-5000, 5000], many: [2], section: "site", documents: onLayout,
  }), // prettier-ignore
  field("First gate's left post, east; north", "Poste izquierdo de la puerta, este; norte", {
    key: "gate_left", kind: "numbers", unit: "ft", range: [-5000, 5000], many: [2], section: "site", documents: onLayout,
  }), // prettier-ignore
  field("Fence nearby", "Cerca vecina", {
    key: "neighbor_1", kind: "numbers", unit: "ft", range: [-5000, 5000], many: [3, 4], section: "site", documents: onLayout,
  }), // prettier-ignore
  field("Another fence nearby", "Otra cerca vecina", {
    key: "neighbor_2", kind: "numbers", unit: "ft", range: [-5000, 5000], many: [3, 4], section: "site", documents: onLayout,
  }), // prettier-ignore
  field("Room for a horse to turn", "Espacio para que un caballo gire", {
    key: "turning_room", kind: "length", unit: "ft", range: [1, 40], default: TURNING_ROOM, section: "site", documents: onLayout,
  }), // prettier-ignore
  ...only("panel pen",
    ...inSlots("panel", "Panel length", "Largo de panel", {
      kind: "length", unit: "ft", range: [1, 40], section: "fence", decides: true, documents: everywhere,
    }, { default: 12, quick: true, structures: panelFences }),
    ...insteadOfSlots("panel", "Panels of length", "Paneles de largo", "fence", { structures: panelFences }),
    ...only("panel pen",
      ...onHandOfSlots("panel", "Panels of length", "Paneles de largo", "fence"),
      field("Panels beyond those on hand", "Paneles que no hay", {
        key: "beyond_stock", kind: "choice", options: beyondStock, default: "bought", section: "fence",
      }),
    ),
  ), // prettier-ignore
  ...only(panelFences,
    ...inSlots("gate", "Gate frame, pin to pin,", "Marco de puerta, entre pasadores,", {
      kind: "length", unit: "ft", range: [1, 40], section: "gates", decides: true, documents: everywhere,
    }, { default: 8, quick: true }),
    ...only("panel pen",
      field("Frame over its clear opening", "Marco menos paso libre", {
        key: "frame_less_opening", kind: "length", unit: "in", range: [0, 6], default: 4, section: "gates", documents: everywhere,
      }),
      field("Bow over the gates, height", "Altura del arco de la puerta", {
        key: "bow_height", kind: "length", unit: "ft", range: [1, 40], section: "gates", documents: everywhere,
      }),
    ),
  ), // prettier-ignore
  ...only(postFences,
    field("Line posts are", "Postes de línea", {
      key: "line_post", beside: "line_posts", kind: "choice", options: Object.keys(postSizes), default: "6 in round", section: "fence", quick: true, decides: true, documents: everywhere,
    }),
    field("Gate posts are", "Postes de puerta", {
      key: "gate_post", beside: "gate_posts", kind: "choice", options: Object.keys(postSizes), default: "8 in round", section: "fence", quick: true, decides: true, documents: everywhere,
    }),
    field("Rails are", "Travesaños", {
      key: "rail_stock", beside: "rails", kind: "choice", options: Object.keys(railStocks), default: "2x6 board", section: "fence", quick: true, decides: true, documents: everywhere,
    }),
    field("Rows of rails", "Hileras de travesaños", {
      key: "rail_rows", kind: "count", range: [1, 10], default: 4, section: "fence", quick: true, decides: true,
    }),
    field("Side that the rails are on", "Los travesaños van por", {
      key: "rail_side", kind: "choice", options: ["inside", "outside"], default: "inside", section: "fence", decides: true,
    }),
    field("Rail stock is this long", "Largo de la pieza", {
      key: "rail_length", kind: "length", unit: "ft", range: [1, 40], section: "fence", decides: true,
    }),
    percent("rail_waste", "Rails bought beyond the cut", "Desperdicio de travesaños", "fence", 100, 5),
    field("Rails are held by", "Los travesaños se fijan con", {
      key: "fastener", kind: "choice", options: fasteners, default: fasteners[0], section: "fence", documents: everywhere,
    }),
    field("Fasteners at each crossing", "Sujetadores por cruce", {
      key: "fasteners_each", beside: "fasteners", kind: "count", range: [0, 12], default: 2, section: "fence",
    }),
    field("Posts stand above ground", "Altura sobre el suelo", {
      key: "post_height", kind: "length", unit: "ft", range: [2, 20], default: 5, section: "fence", decides: true,
    }),
    field("Open under the lowest rail", "Libre bajo el travesaño más bajo", {
      key: "rail_under", kind: "length", unit: "in", range: [0, 36], default: 10, section: "fence", documents: onLayout,
    }),
    field("Kick board at the foot, inside", "Tabla al pie, por dentro", {
      key: "kick_board", beside: "kick", kind: "choice", options: ["none", ...kickBoards], default: "none", section: "fence", decides: true, documents: everywhere,
    }),
    instead("line_posts", "Line posts", "Postes de línea", "fence"),
    instead("gate_posts", "Gate posts", "Postes de puerta", "fence"),
    instead("rails", "Lengths of rail", "Piezas de travesaño", "fence"),
    instead("kick", "Lengths of kick board", "Piezas de tabla al pie", "fence"),
    instead("fasteners", "Fasteners", "Sujetadores", "fence"),
    field("Posts are set", "Los postes van", {
      key: "setting", beside: "holes", kind: "choice", options: settings, default: "tamped earth", section: "holes", quick: true, decides: true,
    }),
    field("Depth of posts by", "Profundidad según", {
      key: "depth_rule", kind: "choice", options: depthRules, default: "third of length", section: "holes", decides: true,
    }),
    field("Frost goes down", "Penetra la helada", {
      key: "frost", kind: "length", unit: "in", range: [0, 96], default: 0, section: "holes",
    }),
    field("Room all round a post", "Espacio alrededor del poste", {
      key: "room_round", kind: "length", unit: "in", range: [1, 8], default: 2, section: "holes", decides: true,
    }),
    field("Gravel under a post", "Grava bajo el poste", {
      key: "hole_gravel", kind: "length", unit: "in", range: [0, 24], default: 4, section: "holes",
    }),
    field("A bag of concrete weighs", "Peso de la bolsa", {
      key: "bag_size", beside: "bags", kind: "number", unit: "lb", range: [10, 110], default: 80, section: "holes",
    }),
    field("Building code: push sideways", "Código: empuje lateral", {
      key: "side_push", kind: "number", unit: "lb", range: [1, 5000], section: "holes", decides: true,
    }),
    field("Building code: it pushes at", "Código: altura del empuje", {
      key: "push_height", kind: "length", unit: "ft", range: [1, 40], default: 4, section: "holes", decides: true,
    }),
    field("Building code: soil bears", "Código: el suelo resiste", {
      key: "soil", kind: "number", unit: "psf/ft", range: [1, 5000], default: 150, section: "holes", decides: true,
    }),
    instead("holes", "Holes", "Hoyos", "holes"),
    instead("bags", "Bags of concrete", "Bolsas de concreto", "holes"),
    ...inSlots("leaf", "Gate leaf", "Hoja de puerta", {
      kind: "length", unit: "ft", range: [2, 20], section: "gates", decides: true, documents: everywhere,
    }, { default: 10, quick: true }),
    field("Room for hinges and latch", "Espacio para bisagras y pestillo", {
      key: "gate_room", kind: "length", unit: "in", range: [0, 24], default: 4, section: "gates", decides: true,
    }),
    field("Of it, a leaf's hinges; blank: half", "De ello, bisagras; vacío: la mitad", {
      key: "hinge_room", kind: "length", unit: "in", range: [0, 24], section: "gates", decides: true,
    }),
    field("Hinges and latches come", "Bisagras y pestillos vienen", {
      key: "gate_hardware", beside: "hinges", kind: "choice", options: hardware, default: hardware[0], section: "gates",
    }),
    gateNumbers("gates_of_two", "Gates of two leaves, their numbers", "Puertas de dos hojas, sus números", { decides: true }),
    gateNumbers("gates_on_face", "Gates hung on the face, numbers", "Puertas sobre la cara, números", { decides: true }),
    field("On the face a leaf laps a post", "Sobre la cara, tapa el poste", {
      key: "gate_lap", kind: "length", unit: "in", range: [0, 11], default: GATE_ROOM.lap, section: "gates", decides: true,
    }),
  ), // prettier-ignore
  ...only(arenas,
    ...arenaSides.flatMap((side, k) => [
      field(`Gate ${k + 1} is on the`, `La puerta ${k + 1} va en`, {
        key: `gate_side_${k + 1}`, kind: "choice", options: arenaSides, default: side, section: "gates", ofGate: k + 1, decides: true, documents: everywhere,
      }),
      field(`Gate ${k + 1}, from the left corner`, `Puerta ${k + 1}, desde la esquina izquierda`, {
        key: `gate_at_${k + 1}`, kind: "length", unit: "ft", range: [0, 1000], section: "gates", ofGate: k + 1, decides: true, documents: everywhere,
      }),
    ]),
  ), // prettier-ignore
  gateNumbers("gates_by_other", "Gates by other, their numbers", "Puertas por otro, sus números", {
    decides: true,
  }),
  field("Fence by other, stake to stake", "Cerca por otro, de estaca a estaca", {
    key: "fence_by_other", kind: "numbers", range: [1, 10_000], many: [2, 4, 6], section: "gates", decides: true, documents: everywhere,
  }), // prettier-ignore
  field("Base depth, compacted", "Espesor de base, compactada", {
    key: "base_depth", kind: "length", unit: "in", range: [0, 24], default: 0, section: "base", quick: true, documents: everywhere,
  }), // prettier-ignore
  percent("base_overrun", "Base: overrun", "Base: excedente", "base", 100, 0),
  percent("base_settle", "Base: lost in compacting", "Base: merma al compactar", "base", 95, 0),
  field("Base is sold by the", "La base se vende por", {
    key: "base_unit", beside: "base", kind: "choice", options: bulkUnits, default: "ton", section: "base",
  }), // prettier-ignore
  field("Base stone weighs", "Peso de la base", {
    key: "base_tons_per_cy", kind: "number", unit: "tons/cu yd", range: [0.5, 3], default: BASE_STONE_TONS, section: "base",
  }), // prettier-ignore
  field("Road fabric is", "Geotextil", {
    key: "fabric", kind: "choice", options: fabricPlaces, default: "none", section: "base", documents: everywhere,
  }), // prettier-ignore
  ...slotKeys("truck").map((truck, k) =>
    instead(`base_${truck}`, `Base loads, truck ${k + 1}`, `Viajes de base, camión ${k + 1}`, "base"),
  ),
  field("Footing depth", "Profundidad de arena", {
    key: "depth", kind: "length", unit: "in", range: [0, 24], default: 3, section: "footing", quick: true, documents: everywhere,
  }), // prettier-ignore
  percent("overrun", "Overrun beyond the figure", "Excedente", "footing", 100, 0),
  percent("settle", "Settle, loose to settled", "Asentamiento", "footing", 95, 0),
  field("Sand is sold by the", "La arena se vende por", {
    key: "sand_unit", kind: "choice", options: bulkUnits, default: "ton", section: "footing",
  }), // prettier-ignore
  field("Sand weighs", "Peso de la arena", {
    key: "tons_per_cy", kind: "number", unit: "tons/cu yd", range: [0.5, 3], default: DRY_SAND_TONS, section: "footing",
  }), // prettier-ignore
  ...inSlots("truck", "Truck that reaches the pen", "Camión que llega al corral", {
    kind: "number", unit: "cu yd", range: [0.1, 60], section: "hauling", documents: ["estimate", "price request"],
  }, { default: 16, quick: true }), // prettier-ignore
  ...insteadOfSlots("truck", "Loads of truck", "Viajes del camión", "hauling"),
  percent("short", "May come short by", "Puede faltar hasta", "hauling", 95, 5),
  field("Mason's line on a roll", "Hilo por rollo", {
    key: "line_roll", beside: "line", kind: "length", unit: "ft", range: [10, 5000], default: 250, section: "supplies",
  }), // prettier-ignore
  field("A paint can marks", "Una lata marca", {
    key: "paint_reach", beside: "paint", kind: "length", unit: "ft", range: [10, 5000], default: 250, section: "supplies",
  }), // prettier-ignore
  instead("stakes", "Stakes", "Estacas", "supplies"),
  instead("line", "Rolls of line", "Rollos de hilo", "supplies"),
  instead("paint", "Cans of paint", "Latas de pintura", "supplies"),
  field("Mobilizations", "Movilizaciones", {
    key: "mobilization", kind: "count", range: [0, 10_000], default: 1, section: "equipment",
  }), // prettier-ignore
  days("auger", "Days of auger", "Días de barrena"),
  days("loader", "Days of loader", "Días de cargador"),
  days("compactor", "Days of compactor", "Días de compactadora"),
  percent("burden", "Burden, of the labor lines", "Cargas sobre la mano de obra", "labor", 100, 0, "labor"),
  field("Hours of labor: use instead", "Horas: usar en su lugar", {
    key: "labor_use", kind: "number", range: [0, 10_000], section: "labor", insteadOf: "labor_count",
  }), // prettier-ignore
  ...only(panelFences, hours("panel", "Hours a panel", "Horas por panel", 0.25)),
  hours("gate", "Hours a gate or leaf", "Horas por puerta u hoja", 1.5),
  ...only(postFences,
    hours("post", "Hours a post set", "Horas por poste", 0.5),
    hours("rail", "Hours a ft of rail", "Horas por pie de travesaño", 0.02),
  ), // prettier-ignore
  hours("yard", "Hours a cu yd spread", "Horas por yarda extendida", 0.1),
  percent("tax", "Tax, of what it is on", "Impuesto", "charges", 95, 0),
  field("The tax is on", "El impuesto es sobre", {
    key: "tax_on", kind: "choice", options: taxBases, default: "material cost", section: "charges",
  }), // prettier-ignore
  percent("contingency", "Contingency, of lines, burden, tax", "Imprevistos", "charges", 100, 0),
  percent("overhead", "Overhead, of all above it", "Gastos generales", "charges", 100, 10),
  percent("markup_material", "Markup, of material cost", "Recargo, material", "charges", 100, 0),
  percent("markup_labor", "Markup, of labor and burden", "Recargo, mano de obra", "charges", 100, 0),
  percent("markup_rental", "Markup, of rental cost", "Recargo, renta", "charges", 100, 0),
  percent("markup_sub", "Markup, of subcontracts", "Recargo, subcontratos", "charges", 100, 0),
  percent("profit", "Profit, of all above, or of price", "Ganancia", "charges", 95, 15),
  field("The profit is a", "La ganancia es", {
    key: "profit_kind", kind: "choice", options: profitKinds, default: "markup", section: "charges",
  }), // prettier-ignore
  field("Least charge for a job", "Cargo mínimo", {
    key: "minimum", kind: "money", unit: "$", range: [0, 10_000_000], section: "charges",
  }), // prettier-ignore
  field("Round the price to the nearest", "Redondear el precio a", {
    key: "rounding", kind: "choice", options: Object.keys(roundings), default: "cent", section: "charges",
  }), // prettier-ignore
];

const byKey = new Map(fields.map((one) => [one.key, one]));

/** The field of that key; throws where there is none, since a key is never a user's input. */
export function fieldOf(key: string): Field {
  const found = byKey.get(key);
  if (!found) throw new Error(`No field ${key}.`);
  return found;
}

/** The fields that a structure has, in order. */
export const fieldsOf = (structure: Structure): Field[] => fields.filter((one) => belongs(one, structure));
