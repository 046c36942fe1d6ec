import { type Language, type North } from "../estimate/fields";
import { sizeInWords } from "../estimate/sentences";
import { type Side } from "../geometry/rounded-outline";
import { feetInches } from "../units/feet-inches";
import { degrees } from "../units/number-text";

/** What a plan says beside its lines. */
export interface PlanWords {
  title: string;
  arenaTitle: string;
  panel(place: number, of: number, length: string): string;
  bay(place: number, of: number, length: string): string;
  gate(place: number, of: number, length: string): string;
  side: Record<Side, string>;
  and(size: string): string;
  diagonals: string;
  radius(feet: number): string;
  opening(feet: number): string;
  twoLeaves(length: string): string;
  gateLabel(leaves: 1 | 2 | undefined, length: string, bearing?: number): string;
  acrossPins(feet: number): string;
  acrossPosts(feet: number): string;
  clearInside: string;
  size(feet: number): string;
  centerStake: string;
  north(which: North): string;
  byOther: string;
  wontClose(feet: number): string;
  built(over: number): string;
}

/** What this room can say to a user, in English and, for the crew's plan, in Spanish. */
export const messages: Record<Language, PlanWords> = {
  en: {
    title: "Plan of the pen",
    arenaTitle: "Plan of the arena",
    side: { left: "left side", far: "far end", right: "right side", near: "near end" },
    and: (size) => `and ${size}`,
    diagonals: "both diagonals",
    radius: (feet) => `radius ${sizeInWords(feet)}`,
    panel: (place, of, length) => `Panel ${place} of ${of}, ${length}`,
    bay: (place, of, length) => `Bay ${place} of ${of}, ${length}`,
    gate: (place, of, length) => (of === 1 ? `Gate, ${length}` : `Gate ${place} of ${of}, ${length}`),
    opening: (feet) => `, clear opening ${sizeInWords(feet)}`,
    twoLeaves: (length) => `two leaves of ${length}`,
    gateLabel: (leaves, length, bearing) =>
      `gate ${leaves === 2 ? "2 x " : ""}${length}${bearing === undefined ? "" : ` at ${degrees(bearing)}`}`,
    acrossPins: (feet) => `${sizeInWords(feet)} across the pins`,
    acrossPosts: (feet) => `${sizeInWords(feet)} across the posts`,
    clearInside: "clear inside",
    size: sizeInWords,
    centerStake: "center stake",
    north: (which) => `${which} north`,
    byOther: "by other",
    wontClose: (feet) => `${sizeInWords(feet)} will not close:`,
    built: (over) => `built ${sizeInWords(Math.abs(over))} ${over > 0 ? "over" : "under"}`,
  },
  es: {
    title: "Plano del corral",
    arenaTitle: "Plano de la pista",
    side: { left: "lado izquierdo", far: "fondo", right: "lado derecho", near: "frente" },
    and: (size) => `y ${size}`,
    diagonals: "las dos diagonales",
    radius: (feet) => `radio ${feetInches(feet, 4)}`,
    panel: (place, of, length) => `Panel ${place} de ${of}, ${length}`,
    bay: (place, of, length) => `Vano ${place} de ${of}, ${length}`,
    gate: (place, of, length) => (of === 1 ? `Puerta, ${length}` : `Puerta ${place} de ${of}, ${length}`),
    opening: (feet) => `, paso libre ${feetInches(feet, 4)}`,
    twoLeaves: (length) => `dos hojas de ${length}`,
    gateLabel: (leaves, length, bearing) =>
      `puerta ${leaves === 2 ? "2 x " : ""}${length}${bearing === undefined ? "" : ` a ${degrees(bearing)}`}`,
    acrossPins: (feet) => `${feetInches(feet, 4)} entre pasadores`,
    acrossPosts: (feet) => `${feetInches(feet, 4)} entre postes`,
    clearInside: "libre por dentro",
    size: (feet) => feetInches(feet, 4),
    centerStake: "estaca central",
    north: (which) =>
      ({ site: "norte de obra", magnetic: "norte magnético", true: "norte verdadero" })[which],
    byOther: "por otro",
    wontClose: (feet) => `${feetInches(feet, 4)} no cierra:`,
    built: (over) => `queda ${feetInches(Math.abs(over), 4)} ${over > 0 ? "de más" : "de menos"}`,
  },
};
