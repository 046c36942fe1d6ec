import { slotKeys } from "../../estimate/fields";
import { type Job } from "../../estimate/job";
import { entry, numberEntry, textEntry, type Entry } from "./entries";

/** Who a request or an order is from and to, and what tells it from others. */
export const addressEntries = {
  number: numberEntry("number", "Number", "Número"),
  supplier: textEntry("supplier", "To", "Para"),
  business: textEntry("business", "From", "De"),
  contact: textEntry("contact", "Our phone or mail", "Nuestro teléfono o correo"),
  date: textEntry("date", "Date", "Fecha"),
  answerBy: textEntry("answer_by", "Answer by", "Responder antes de"),
  jobNumber: textEntry("job_number", "Our job number", "Nuestro número de trabajo"),
} as const;

/** Who takes a load off a truck. */
const unloaders = [
  "the truck dumps it",
  "the driver with the truck's own lift",
  "we do by hand",
  "we do with a machine",
];

/** What a driver has to know. */
export const deliveryEntries: readonly Entry[] = [
  textEntry("ship_to", "Ship to", "Entregar en"),
  textEntry("site_phone", "Phone at the site", "Teléfono en la obra"),
  textEntry("trucks", "Trucks that reach it", "Camiones que llegan"),
  entry("Narrowest opening, ft", "Paso más angosto", {
    key: "opening", kind: "length", unit: "ft", range: [4, 60],
  }),
  textEntry("dump_at", "Dump or set down at", "Dónde descargar"),
  entry("Who unloads", "Quién descarga", { key: "unloads", kind: "choice", options: unloaders }),
  textEntry("from_day", "Deliver from", "Entregar desde"),
  textEntry("to_day", "Deliver until", "Entregar hasta"),
]; // prettier-ignore

/** What a supplier fills in beside the lines. */
export const supplierEntries = {
  freight: entry("Delivery charge, all loads", "Cargo por entrega", {
    key: "freight", kind: "money", unit: "$", range: [0, 10_000_000],
  }),
  holdsUntil: textEntry("holds_until", "Prices hold until", "Precios válidos hasta"),
} as const; // prettier-ignore

/** The day and the place that the jobs know already: the site, and what trucks reach it. */
export function deliveryDefaults(jobs: readonly Job[]): Record<string, Entry["default"]> {
  const each = <T>(some: T[]) => [...new Set(some)];
  const sites = each(jobs.map(({ site }) => String(site ?? "").trim()).filter(Boolean));
  const trucks = each(jobs.flatMap((job) => slotKeys("truck").flatMap((key) => (job[key] === null ? [] : [Number(job[key])]))));
  return {
    ship_to: sites.join("; ") || null,
    trucks: trucks.length > 0 ? `up to ${Math.max(...trucks)} cu yd` : null,
  };
} // prettier-ignore
