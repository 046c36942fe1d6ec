/** What the panel can say beside its views: states, refusals, and what was done. */
export const messages = {
  newJob: "New job, not written",
  notWritten: (sheet: string) => `${sheet}, changes not written`,
  estimateSheet: "Estimate",
  write: "Write estimate",
  update: "Update estimate",
  nothingToWrite: "Nothing has changed since it was written.",
  working: "Working in the workbook.",
  problem: (label: string, why: string) => `${label}: ${why}`,
  written: (sheet: string) => `Written on the new sheet "${sheet}".`,
  updated: (sheet: string) => `"${sheet}" holds your answers now.`,
  isPlain: (sheet: string) =>
    `"${sheet}" is a plain copy: its figures would not follow. Make it live again first.`,
  otherStructure: (sheet: string, structure: string) =>
    `"${sheet}" is the estimate of a ${structure} and stays one. Write these answers as a new estimate.`,
  madeLive: (from: string, to: string) => `"${to}" is a live estimate of "${from}", which stays as it is.`,
  rowsAdded: (count: number, sheet: string) =>
    `${count === 1 ? "One row was" : `${count} rows were`} added at the foot of "${sheet}": type the prices there.`,
  noRowsNeeded: "Every item has a row in the prices already: type the missing prices there.",
  putBack: (sheet: string) => `The keys are back on "${sheet}".`,
  putInto: (where: string) => `Put into ${where} as a live formula.`,
  gone: (sheet: string) =>
    `"${sheet}" is no longer in the workbook, or is no estimate any more. Your answers are kept here: write them as a new estimate.`,
  noCellFor: (labels: string) =>
    `The sheet has no cell for: ${labels}. Put it back, or write a new estimate; the rest was written.`,
  layoutSheet: "Layout",
  writeLayout: "Write layout sheet",
  layoutNeedsEstimate: "Write the estimate first: the layout sheet is figured from its sheet.",
  layoutNeedsUpdate: (sheet: string) =>
    `Update the estimate first: "${sheet}" does not hold these answers yet, and the layout sheet is figured from it.`,
  layoutNeedsAnswer: (why = "") => `The answers lead to nothing to lay out yet${why ? `: ${why}` : "."}`,
  layoutCountsTyped: (cells: string) =>
    `The count of panels was typed over in ${cells}: write it under "Use instead", and put the formula back.`,
  layoutWritten: (sheet: string) =>
    `Written on the new sheet "${sheet}". Print it for the crew; its top says so when the estimate moves on.`,
  selfCheck: "Check the functions",
  selfCheckSheet: "Self-check",
  selfChecked: (sheet: string) => `The sheet "${sheet}" compares every function here with what it must give.`,
  noFigures:
    "What figures the answers could not be loaded. They are kept here: open the panel again once the connection is back.",
  failed: (why: string) => `This did not work: ${why}. Your answers are kept here. Try again.`,
};
