import { type Label, type Language } from "../estimate/fields";
import { type Side } from "../geometry/rounded-outline";
import { type RightTriangle } from "../geometry/three-four-five";

const label = (en: string, es: string): Label => ({ en, es });

/** The words that the layout sheet of an arena has beside those of every layout sheet. */
export const arenaLabels = {
  along: label("Along", "A lo largo"),
  across: label("Across", "A lo ancho"),
  on: label("On", "En"),
  bearing: label("Bearing of the left side", "Rumbo del lado izquierdo"),
  square: label("Square the corners", "Poner a escuadra"),
  references: label("Reference stakes, outside the work", "Estacas de referencia, fuera de la obra"),
  far: label("A from the center, past the far end", "A desde el centro, pasando el fondo"),
  right: label("B from the center, past the right side", "B desde el centro, pasando el lado derecho"),
  arc: label("arc", "arco"),
  crown: label(
    "Crown: it falls from the middle line to the long sides by",
    "Corona: baja de la línea media a los lados largos",
  ),
  how: label(
    "Stakes run clockwise from the first gate. Along and across: from the near left corner, along the left side and to the right of it. Chord: from the stake before. Tie 1: from stake 1. Running: around the fence from stake 1. Shot: the height taken there; cut or fill to the grade below follows.",
    "Las estacas van como el reloj desde la primera puerta. A lo largo y a lo ancho: desde la esquina izquierda del frente. Cuerda: desde la estaca anterior. Desde la 1: cinta recta. Corrida: por la cerca desde la 1. Nivel: la altura tomada ahí; el corte o relleno sale con la rasante de abajo.",
  ),
} as const satisfies Record<string, Label>;

/** The sides of an arena, and what is not on one of them. */
export const sideLabels: Record<Side, Label> = {
  left: label("left", "izquierdo"),
  far: label("far", "fondo"),
  right: label("right", "derecho"),
  near: label("near", "frente"),
};

/** The corners clockwise from near left. */
export const cornerLabels: readonly Label[] = [
  label("near left corner", "esquina izquierda del frente"),
  label("far left corner", "esquina izquierda del fondo"),
  label("far right corner", "esquina derecha del fondo"),
  label("near right corner", "esquina derecha del frente"),
];

/** A right triangle that squares a corner: "3-4-5 times 20: 60, 80 and 100 ft". */
export const triangleSentence: Record<Language, (triangle: RightTriangle) => string> = {
  en: ({ multiple, short, long, hypotenuse }) =>
    `3-4-5 times ${multiple}: ${short} and ${long} ft along the sides, ${hypotenuse} ft between`,
  es: ({ multiple, short, long, hypotenuse }) =>
    `3-4-5 por ${multiple}: ${short} y ${long} pies en los lados, ${hypotenuse} pies entre ellos`,
};
