/** Every sentence that the sheets room can say to a user. */
export const messages = {
  formulaTooLong: (most: number) => `This formula is too long: a formula holds at most ${most} characters.`,
  formulaTooDeep: (most: number) =>
    `This formula is nested too deep: at most ${most} brackets inside one another.`,
  formulaUnread: (place: number) =>
    `This formula cannot be read at character ${place}: it needs closed brackets and quotes, and a value between operators.`,
  dependsOnItself: "This cell depends on itself.",
  onlySpreadsheet: "Only a spreadsheet can work out this cell.",
  fixedInCopy: "Fixed in this copy: figures that rest on it were worked out and stay as they are.",
  plainCopy: (cells: number) =>
    `Plain copy: figures of the PEN functions stay as they were worked out. ${cells === 1 ? "1 cell that leads" : `${cells} cells that lead`} to them ${cells === 1 ? "is" : "are"} fixed in this copy; everything else stays live.`,
};
