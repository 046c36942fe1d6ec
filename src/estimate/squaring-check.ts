import { cornerMoves, type CornerMove } from "../geometry/corner-moves";
import { squareUp } from "../geometry/squaring-up";
import { INCHES_PER_FOOT } from "../units/conversion";
import { inchesAlone } from "../units/feet-inches";
import { LONGEST_FT } from "../units/range";
import { Refusal } from "../units/refusal";
import { field, type Question } from "./field";
import { readTyped, type TypedAnswers } from "./typed-answers";

const measure = (key: string, en: string, es: string): Question =>
  field(en, es, {
    key: `measured_${key}`,
    kind: "length",
    unit: "ft",
    range: [0, LONGEST_FT],
    section: "layout",
  });

/** What is taped between the four corner stakes of an arena, in order: the sides clockwise, then the diagonals. */
export const measures: readonly Question[] = [
  measure("left", "Left side, taped", "Lado izquierdo, medido"),
  measure("far", "Far end, taped", "Fondo, medido"),
  measure("right", "Right side, taped", "Lado derecho, medido"),
  measure("near", "Near end, taped", "Frente, medido"),
  measure("diagonal_1", "Near left to far right", "Frente izquierdo a fondo derecho"),
  measure("diagonal_2", "Far left to near right", "Fondo izquierdo a frente derecho"),
];

/** How the corner stakes stand, or which measures are still wanted or cannot be read, by key. */
export interface SquaringCheck extends TypedAnswers {
  /** How far out the six measures are with one another, and where each corner goes; empty until all are there. */
  sentences: string[];
}

const corners = ["Near left", "Far left", "Far right", "Near right"];

/** A corner nearer than this to its place stays, in (common practice, no source). */
const NEAR_ENOUGH = 1 / 8;

/**
 * What the taped measures say of an arena of this length and width, ft: how far out they are, and how many inches each
 * corner slides so that it is square, the near left stake and the line of the left side being kept.
 */
export function squaringCheck(typed: Record<string, string>, length: number, width: number): SquaringCheck {
  const check: SquaringCheck = { ...readTyped(measures, typed), sentences: [] };
  const taped = measures.map(({ key }) => check.read[key]);
  if (taped.some((one) => one === null)) return check;
  try {
    check.sentences = sentencesOf(taped as number[], length, width);
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    check.sentences = [refusal.message];
  }
  return check;
}

function sentencesOf(taped: readonly number[], length: number, width: number): string[] {
  const [left, far, right, near, first, second] = taped;
  const found = squareUp({ sides: [left, far, right, near], diagonals: [first, second] });
  const out = found.out * INCHES_PER_FOOT;
  const moves = cornerMoves(found.corners, length, width, "side 1");
  const said = moves.flatMap((move, k) => moveInWords(corners[k], move));
  const fit =
    out < NEAR_ENOUGH
      ? "The six measures fit one another."
      : `The six measures are ${inWords(out)} out with one another: one of them is off by about that much.`;
  return [fit, ...(said.length > 0 ? said : ["The corners are square, and as far apart as they should be."])];
}

const inWords = (inches: number) => inchesAlone(inches, 8, "words");

/** Where a corner stake goes, as seen from the near left stake along the left side; nothing where it may stay. */
function moveInWords(corner: string, { along, across }: CornerMove): string[] {
  const part = (feet: number, plus: string, minus: string) => {
    const inches = Math.abs(feet) * INCHES_PER_FOOT;
    return inches < NEAR_ENOUGH ? [] : [`${inWords(inches)} ${feet > 0 ? plus : minus}`];
  };
  const parts = [
    ...part(along, "toward the far end", "toward the near end"),
    ...part(across, "away from the left side", "toward the left side"),
  ];
  return parts.length > 0 ? [`${corner}: slide ${parts.join(" and ")}.`] : [];
}
