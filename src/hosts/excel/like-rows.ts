import { liveFormula } from "../../sheets/formula";
import { movedDown } from "../../sheets/moved";
import { type PlanCell } from "../../sheets/plan";
import { rectangles, type Area } from "./areas";

/** What a request to copy takes in bytes, about: copies that save less are not worth one. */
const costOfCopy = 350;

/**
 * The areas whose formulas Excel can copy from the row above them, since they say of their place what that row says of
 * its own: rows of one list, which differ in nothing else. Only where a copy is shorter than the formulas.
 */
export function likeRows(cells: PlanCell[]): Area[] {
  const formulas = new Map(
    cells
      .filter(({ says }) => says.kind !== "constant")
      .map((cell) => [placeOf(cell.row, cell.column), { cell, formula: liveFormula(cell.says) }]),
  );
  const alike = [...formulas.values()].filter(({ cell: { row, column }, formula }) => {
    const above = formulas.get(placeOf(row - 1, column));
    const copied = above && movedDown(above.cell.says, 1);
    return copied !== undefined && liveFormula(copied) === formula;
  });
  const saved = ({ top, left, bottom, right }: Area) =>
    alike
      .filter(({ cell: { row, column } }) => row >= top && row <= bottom && column >= left && column <= right)
      .reduce((sum, { formula }) => sum + formula.length, 0);
  return rectangles(alike.map(({ cell }) => cell)).filter((area) => saved(area) > costOfCopy);
}

const placeOf = (row: number, column: number) => `${row} ${column}`;

/** The row that an area is copied from. */
export const rowAbove = ({ top, left, right }: Area): Area => ({
  top: top - 1,
  left,
  bottom: top - 1,
  right,
});
