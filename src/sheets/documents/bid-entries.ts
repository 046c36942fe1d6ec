import { entry, moneyEntry, numberEntry, textEntry, type Entry } from "./entries";

/** Who bids; the next bid of a workbook starts with what the last one said. */
export const businessEntries: readonly Entry[] = [
  textEntry("business", "Your business", "Su negocio"),
  textEntry("business_lines", "Address, phone", "Dirección, teléfono"),
  textEntry("license", "License", "Licencia"),
  textEntry("insurance", "Insurance", "Seguro"),
];

/** What tells a bid from others. */
export const bidHead = {
  number: numberEntry("bid_number", "Bid number", "Número"),
  date: textEntry("bid_date", "Date", "Fecha"),
  valid: textEntry("bid_valid", "Good until", "Válida hasta"),
};

/** When the work is done, and who pulls permits. */
export const bidWork = {
  permits: entry("Permits are pulled by", "Los permisos los tramita", {
    key: "bid_permits", kind: "choice", options: ["the owner", "the contractor"], default: "the owner",
  }),
  start: textEntry("bid_start", "Start", "Inicio"),
  days: entry("Working days", "Días de trabajo", { key: "bid_days", kind: "number", range: [0.5, 365] }),
}; // prettier-ignore

/** Unit prices for what may come on top; one that is blank is not in the bid. */
export const bidExtras: readonly (Entry & { per: string })[] = [
  { ...moneyEntry("extra_rock", "Rock or roots in a hole", "Roca o raíces en un hoyo"), per: "each hole" },
  { ...moneyEntry("extra_sand", "More sand, spread", "Más arena, extendida"), per: "cu yd" },
  { ...moneyEntry("extra_hour", "Other work that you ask for", "Otro trabajo que pida"), per: "hour" },
];

/** What the price of what is built, such as "the pen", counts on; the user may write each anew. */
export const bidCountsOn = (built: string): readonly Entry[] =>
  [
    "No rock, roots or buried rubble where posts, pins or stakes go.",
    `A loaded dump truck reaches ${built} and can turn and raise its bed there, with no wires above.`,
    "The owner marks private lines: water, power to barns, drains, sprinklers.",
    "We mark the dig in white and have public lines located (811) before any hole is dug.",
  ].map((words, k) =>
    textEntry(`counts_on_${k + 1}`, `The price counts on ${k + 1}`, `El precio supone ${k + 1}`, words),
  );

/** How the price is paid: what is due before the work begins, at a milestone, and with the rest. */
export const bidDraws = {
  deposit: entry("Deposit, of the price", "Anticipo", { key: "deposit", kind: "number", unit: "%", range: [0, 100], default: 10 }),
  milestone: textEntry("milestone", "Then, when", "Después, cuando", "When the fence stands"),
  share: entry("Then, of the price", "Después, del precio", { key: "milestone_share", kind: "number", unit: "%", range: [0, 100], default: 50 }),
  last: textEntry("last_draw", "The rest, when", "El resto, cuando", "When all is done"),
}; // prettier-ignore

/** The terms; the user may write each anew. */
export const bidTerms = {
  warranty: textEntry("bid_warranty", "Workmanship", "Mano de obra",
    "We mend faulty work of ours without charge for one year from completion. Materials carry their maker's own warranty."),
  legal: textEntry("bid_legal", "Notices", "Avisos",
    "Your right to cancel and notices about liens follow the form of your state, which we attach where it is required."),
  changes: textEntry("bid_changes", "Changes", "Cambios",
    "Anything beyond this bid is agreed in a signed change order before it is done."),
}; // prettier-ignore

/** The text of one paragraph of the scope: of which estimate, and which paragraph, each from 1. */
export const scopeEntry = (source: number, paragraph: number, words: string | null = null): Entry =>
  textEntry(
    `scope_${source}_${paragraph}`,
    `Scope ${source}.${paragraph}`,
    `Alcance ${source}.${paragraph}`,
    words,
  );

/** What the panel asks before a bid is written. */
export const bidAsked: readonly Entry[] = [
  ...businessEntries,
  ...Object.values(bidHead),
  ...Object.values(bidWork),
  ...Object.values(bidDraws),
  ...bidExtras,
];
