const cells = (count: number) => (count === 1 ? "1 cell" : `${count} cells`);
const changed = (count: number) => (count === 1 ? "1 cell changes" : `${count} cells change`);

/** What this section of the panel can say. */
export const messages = {
  freeze: "Freeze",
  freezeHint:
    "For a workbook that others open without this add-in: each PEN figure becomes the number it shows, and every entry that leads to it is marked as fixed.",
  repair: "Repair",
  repairHint: "Where figures show #NAME?, or a file put a strange name before PEN, the formulas are entered again.",
  sheet: "This sheet …",
  selection: "The selection …",
  willChange: (count: number, more: number) =>
    `${changed(count)}${more > 0 ? `. The first ${count - more} of them` : ""}:`,
  columns: ["Cell", "Now", "Then"],
  fixed: "stays, and is marked as fixed",
  freezeNow: (count: number) => `Freeze ${cells(count)}`,
  repairNow: (count: number) => `Enter ${cells(count)} again`,
  leave: "Leave it as it is",
  nothingToFreeze: (where: string) => `No formula in ${where} asks this add-in, so there is nothing to freeze.`,
  nothingToRepair: (where: string) => `No formula in ${where} needs to be entered again.`,
  unknown: (names: string[]) =>
    `This add-in has no function ${names.map((name) => `PEN.${name}`).join(", ")}: such formulas stay as they are.`,
  changedMeanwhile: "The sheet has changed since this was shown, so nothing was done. Look once more at what will change.",
  frozen: (count: number, where: string) => `${cells(count)} of ${where} changed: no figure there asks this add-in any more. Undo takes it back.`,
  repaired: (count: number, where: string) => `${cells(count)} of ${where} entered again.`,
  copy: "Plain copy",
  copyHint: "A file for people without this add-in: no PEN formula, no key, no way back to this workbook.",
  copyOf: "Sheets of the copy",
  keepKeys: "Estimates can be made live again",
  keepKeysHint: "Their hidden keys go along. A bid or a list for a supplier never takes its keys or hidden cells along.",
  download: "Download the plain copy",
  open: "Open the plain copy",
  chooseSheets: "Choose at least one sheet for the copy.",
  fileName: "Plain copy",
  copied: (sheets: number) =>
    `The plain copy has ${sheets === 1 ? "1 sheet" : `${sheets} sheets`}. What was read from a sheet that stayed behind is fixed in it.`,
  lost: (sheet: string, what: string) => `${sheet}: ${what}`,
  nameErrors: (places: string) =>
    `No copy was made: ${places} would show #NAME? to whoever opens it. Repair these cells, or clear them, then try again.`,
}; // prettier-ignore
