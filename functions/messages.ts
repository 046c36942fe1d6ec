import { feetInches } from "../src/units/feet-inches";

/** What the worksheet functions can say in an error cell; the rooms below them have messages of their own. */
export const messages = {
  about: (argument: string, message: string) => `${argument}: ${message}`,
  needed: (allowed: string) => `needed, ${allowed}`,
  notANumber: "must be a number or a text such as 12.5",
  notALength: `must be a number or a text such as ${feetInches(12.5)}`,
  oneCell: (cells: number) => `one cell, not a range of ${cells}`,
  oneOf: (options: readonly string[]) =>
    `must be ${options.map((option) => `"${option}"`).join(", ")} or blank`,
  sameCells: (other: string, cells: number) => `must have as many cells as ${other}, ${cells}`,
  countWithoutLength: "stands beside a blank panel: give its length or clear the count",
  unexpected: "this could not be worked out: a fault of the function, not of the cells",
  noResult: "the numbers are too large or too small to work this out",
};
