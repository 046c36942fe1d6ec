import { type Label, type Language, type North } from "../estimate/fields";
import { feetInches } from "../units/feet-inches";
import { degrees } from "../units/number-text";
import { offGateSentence } from "../estimate/site-sentences";
import { type LaidPieces } from "./layout-data";

const label = (en: string, es: string): Label => ({ en, es });

/** The words of a layout sheet in both languages of the job sites; Spanish as crews say it on American fence jobs. */
export const labels = {
  title: label("Layout sheet", "Hoja de trazo"),
  outOfDate: label(
    "OUT OF DATE: the estimate has other inputs now; write the layout sheet again",
    "DESACTUALIZADA: el presupuesto tiene otros datos; escriba otra vez la hoja de trazo",
  ),
  laidOut: label("What is laid out", "Lo que se traza"),
  line: label("Radius line", "Hilo del radio"),
  centerStake: label("Center stake, thickness", "Estaca central, grueso"),
  can: label("Paint can, across", "Lata de pintura, diámetro"),
  loop: label("Each loop with its knot takes", "Cada lazo con su nudo lleva"),
  tight: label("Pulled tight, loop to loop", "Estirado, de lazo a lazo"),
  cut: label("Cut off the roll", "Cortar del rollo"),
  references: label("Reference stakes, outside the work", "Estacas de referencia, fuera de la obra"),
  fromCenter: label("A and B, each from the center", "A y B, cada una desde el centro"),
  apart: label("A to B, to check", "De A a B, para revisar"),
  resetCenter: label("Where both tapes cross is the center", "Donde cruzan las dos cintas es el centro"),
  bearing: label("Bearing of the gate's middle", "Rumbo al centro de la puerta"),
  firstBearing: label("Bearing of stake 1", "Rumbo a la estaca 1"),
  measuredTo: label("Measure to", "Medir hasta"),
  "pin center": label("pin center", "el centro del pasador"),
  "post center": label("post center", "el centro del poste"),
  "post face": label("post face", "la cara del poste"),
  feet: label("ft", "pies"),
  feetAndInches: label("ft, in", "pies, pulg"),
  inches: label("in", "pulg"),
  stake: label("Stake", "Estaca"),
  radius: label("Radius", "Radio"),
  chord: label("Chord", "Cuerda"),
  tie1: label("Tie 1", "Desde la 1"),
  tie2: label("Tie 2", "Desde la 2"),
  kind: label("Kind", "Qué es"),
  side: label("Side", "Lado"),
  hole: label("Hole", "Hoyo"),
  holeDepth: label("Depth", "Fondo"),
  angle: label("Angle", "Ángulo"),
  running: label("Running", "Corrida"),
  asSet: label("As set", "Como quedó"),
  byOther: label("by other", "por otro"),
  shot: label("Shot", "Nivel"),
  cutOrFill: label("Cut / fill", "Corte / relleno"),
  fromMark: label("From the crew's mark", "Desde la marca"),
  grade: label("Grade, for cut or fill", "Rasante, para corte o relleno"),
  benchmark: label("Height of the benchmark", "Nivel del banco de nivel"),
  centerGrade: label(
    "Finished grade at the center is above it by",
    "La rasante en el centro está arriba de él",
  ),
  fall: label("It falls to one side by", "Baja hacia un lado"),
  fallBearing: label("at the bearing", "con rumbo"),
  crown: label("Crown: it falls from the center by", "Corona: baja desde el centro"),
  gateFirst: label("Gate first, from the crew's mark", "Primero la puerta, desde la marca"),
  centerEast: label("Center stake, east of the mark", "Estaca central, al este de la marca"),
  centerWest: label("Center stake, west of the mark", "Estaca central, al oeste de la marca"),
  centerNorth: label("Center stake, north of the mark", "Estaca central, al norte de la marca"),
  centerSouth: label("Center stake, south of the mark", "Estaca central, al sur de la marca"),
  bothRadii: label(
    "The radius from stakes 1 and 2 crosses at the center",
    "El radio desde las estacas 1 y 2 cruza en el centro",
  ),
  notes: label("Found on the site", "Hallado en el lugar"),
  how: label(
    "Stakes run clockwise from the first gate. Chord: from the stake before. Ties: from stakes 1 and 2. Angle: at the center, from stake 1. Running: around the fence from stake 1. Shot: the height taken there; cut or fill to the grade below follows.",
    "Las estacas van como el reloj desde la primera puerta. Cuerda: desde la estaca anterior. Desde la 1 y la 2: cinta recta. Ángulo: en el centro, desde la estaca 1. Corrida: por la cerca desde la 1. Nivel: la altura tomada ahí; el corte o relleno sale con la rasante de abajo.",
  ),
  pin: label("pin", "pasador"),
  "gate pin": label("gate pin", "pasador de puerta"),
  post: label("post", "poste"),
  "gate post": label("gate post", "poste de puerta"),
  corner: label("corner", "esquina"),
  "tangent point": label("tangent point", "punto de tangencia"),
  "arc center": label("arc center", "centro de arco"),
  reference: label("reference", "referencia"),
  hinge: label("hinge", "bisagra"),
  latch: label("latch", "pestillo"),
  site: label("from site north", "desde el norte de obra"),
  magnetic: label("from magnetic north", "desde el norte magnético"),
  true: label("from true north", "desde el norte verdadero"),
  coordinates: label("For an instrument at the center", "Para un instrumento en el centro"),
  stakeBearing: label("Bearing, °", "Rumbo, °"),
  east: label("East, ft", "Este, pies"),
  north: label("North, ft", "Norte, pies"),
  inputs: label("Laid out from", "Trazado con"),
  used: label("Used", "Usado"),
  now: label("Estimate now", "Presupuesto hoy"),
  changed: label("changed", "cambió"),
  countOf: label("Count of panel", "Cantidad del panel"),
} as const satisfies Record<string, Label>;

/** Cautions for whoever drives the stakes. */
export const layoutCautions: readonly Label[] = [
  label(
    "BURIED LINES: white-line the dig, then have public lines located (call 811 in the US) before a stake, a post or a blade goes in. The owner has private lines marked. Hand-dig near a mark.",
    "LÍNEAS ENTERRADAS: marque de blanco donde va a excavar y pida que localicen las líneas públicas (llame al 811 en EE. UU.) antes de clavar o excavar. El dueño marca las privadas. Junto a una marca, excave a mano.",
  ),
  label(
    "PAINT: white for the dig, pink for stakes and lines. By the uniform color code every other color belongs to a utility: leave those marks alone.",
    "PINTURA: blanco para excavar, rosa para estacas y líneas. Por el código uniforme de colores, los demás colores son de los servicios: no toque esas marcas.",
  ),
  label(
    "Keep the center and both reference stakes until the last piece stands. Cap stakes and bars, and keep people out of the way of trucks and blades.",
    "Deje la estaca central y las dos de referencia hasta poner la última pieza. Tape las puntas de estacas y varillas, y aleje a la gente de camiones y cuchillas.",
  ),
];

const counted = (count: number, one: string, many: string, length: number, of: string) =>
  `${count} ${count === 1 ? one : many} ${of} ${feetInches(length)}`;

const toward = (feet: number, [ahead, back]: readonly [string, string]) =>
  `${feetInches(Math.abs(feet)) || "0'"} ${feet < 0 ? back : ahead}`;

/** The sentences of a layout sheet that carry figures. */
export const sentences = {
  en: {
    issued: (revision: number, date: string) => `Revision ${revision}, ${date}`,
    panel: (count: number, length: number) => counted(count, "panel", "panels", length, "of"),
    gate: (count: number, length: number) => counted(count, "gate", "gates", length, "of"),
    bay: (count: number, length: number) => counted(count, "bay", "bays", length, "of"),
    clockwise: (angle: number, gate: boolean) =>
      `${degrees(angle)} clockwise from ${gate ? "the gate's middle" : "stake 1"}, at the center`,
    footer: (name: string) => `${name}. Figures are for planning. Local codes, permits and licensed practice come first.`,
    inputFrom: (least: number, most: number) => `Write inches, a number from ${least} to ${most}.`,
    within: (least: number, most: number) => `Write a number from ${least} to ${most}.`,
    height: "Write the height in feet, a number.",
    fromMark: (name: string, east: number, north: number) =>
      `${name}: ${toward(east, ["east", "west"])}, ${toward(north, ["north", "south"])} of the mark`,
    offGate: (over: number) => offGateSentence(over),
    cut: "cut ",
    fill: "fill ",
  },
  es: {
    issued: (revision: number, date: string) => `Revisión ${revision}, ${date}`,
    panel: (count: number, length: number) => counted(count, "panel", "paneles", length, "de"),
    gate: (count: number, length: number) => counted(count, "puerta", "puertas", length, "de"),
    bay: (count: number, length: number) => counted(count, "tramo", "tramos", length, "de"),
    clockwise: (angle: number, gate: boolean) =>
      `${degrees(angle)} como el reloj desde ${gate ? "el centro de la puerta" : "la estaca 1"}, en el centro`,
    footer: (name: string) => `${name}. Medidas para planear. Primero van los códigos, los permisos y los profesionales con licencia.`,
    inputFrom: (least: number, most: number) => `Escriba pulgadas, un número de ${least} a ${most}.`,
    within: (least: number, most: number) => `Escriba un número de ${least} a ${most}.`,
    height: "Escriba la altura en pies, un número.",
    fromMark: (name: string, east: number, north: number) =>
      `${name}: ${toward(east, ["al este", "al oeste"])}, ${toward(north, ["al norte", "al sur"])} de la marca`,
    offGate: (over: number) => offGateSentence(over, "es"),
    cut: "corte ",
    fill: "relleno ",
  },
} satisfies Record<Language, unknown>; // prettier-ignore

const through = {
  en: {
    opening: ", clear opening ",
    bow: ", bow at ",
    pair: (count: number, leaf: number) => counted(count, "gate", "gates", leaf, "of two leaves of"),
  },
  es: {
    opening: ", paso libre ",
    bow: ", arco a ",
    pair: (count: number, leaf: number) => counted(count, "puerta", "puertas", leaf, "de dos hojas de"),
  },
} satisfies Record<Language, unknown>;

/** Like pieces in words; of a gate also what passes through it. */
export function piecesInWords(
  { what, count, length, leaves, opening, bow }: LaidPieces,
  language: Language,
): string {
  const words = through[language];
  return [
    leaves === 2 ? words.pair(count, length) : sentences[language][what](count, length),
    ...(opening === undefined ? [] : [words.opening, feetInches(opening)]),
    ...(bow === undefined ? [] : [words.bow, feetInches(bow)]),
  ].join("");
}

/** The words for the north that bearings are counted from. */
export const northLabel = (north: North) => labels[north];
