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
  estimateTitle: "Estimate",
  headers: ["Item", "Quantity", "Unit", "Unit price", "Amount", "Tax", "Note"],
  inputHeaders: ["What goes in", "Value", "Unit", "Feet and inches", "Use instead", "Counted"],
  panelItem: "Panel, ",
  gateItem: "Gate in its frame, ",
  haulItem: "Truck load of ",
  sandItem: "Sand, delivered loose",
  suppliesItems: { stakes: "Layout stakes", line: "Mason's line", paint: "Marking paint, white or pink" },
  priceIsMissing: " price missing",
  pricesAreMissing: " prices missing",
  onExamples: "Some lines stand on example prices: type your own on the prices sheet",
  cautions: "Cautions",
  ownLine: "A line of your own: item, quantity, unit, unit price; yes under Tax if it is taxed.",
  between: (least: number, most: number) => `Write a number from ${least} to ${most}.`,
  wholeBetween: (least: number, most: number) =>
    `Write a whole number from ${least} to ${most}, or leave it blank.`,
  inUnit: (unit: string, least: number, most: number) =>
    `Write a number from ${least} to ${most} (${unit}). Other units go in through the panel.`,
  oneOf: (options: readonly string[]) => `Choose one of: ${options.join(", ")}.`,
  yesOrNo: "Write yes or no.",
  pricesTitle: "Prices",
  pricesHint:
    "These are yours: type over any of them. An example mark goes away with the first price of your own. Copy a row to add a size.",
  footer: "Page &P of &N",
};
