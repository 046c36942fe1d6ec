/** What this host can say to a user: what happened, why, and what to do next. */
export const messages = {
  editing: "Excel is still editing a cell, so it takes nothing from the panel. Press Enter or Esc in the sheet, then try again.",
  nameTaken: (name: string) =>
    `A sheet named "${name}" is already in the workbook, and nothing is written over it. Choose another name, then try again.`,
  gone: "A sheet that this needs is no longer in the workbook: it was deleted or renamed. Show the sheet you want to work on, then try again.",
  noCell: "What is selected is no cell (a picture or a chart, perhaps). Click one empty cell, then try again.",
  locked:
    "The sheet or the workbook is protected or open for reading only, so Excel lets nothing be written. Take the protection off (Review tab) or save a copy under a new name, then try again.",
  tooLarge: "This is more than Excel takes in one request. Use fewer lines or a smaller picture, then try again.",
  tooOld: "This version of Excel lacks something the panel needs. Update Excel, then try again.",
  unknown: (detail: string) => `Excel could not do this and says: ${detail}. Save the workbook, then try again.`,
  noPicture: "The picture of the plan could not be drawn. Close the panel and open it again, then try again.",
  silent: "Excel no longer answers the panel. Close the panel and open it again.",
  untouched: "The workbook is as it was.",
  left: (names: string[]) =>
    names.length === 1
      ? `The sheet "${names[0]}" may have been left unfinished: if you see it, delete it.`
      : `These sheets may have been left unfinished: if you see them, delete them: ${names.map((name) => `"${name}"`).join(", ")}.`,
  notRestored: (sheet: string, addresses: string[]) =>
    `Some of these cells on "${sheet}" may hold new values: ${addresses.join(", ")}. Check them.`,
  notEmpty: (where: string) =>
    `The cell ${where} holds something, and nothing is written over it. Click an empty cell, then try again.`,
  nameEmpty: "A sheet needs a name. Type one, then try again.",
  nameLong: (name: string) => `The name "${name}" is too long: a sheet's name has at most 31 characters. Shorten it, then try again.`,
  nameCharacters: (name: string) =>
    `The name "${name}" cannot be a sheet's: it may not hold : \\ / ? * [ ] nor begin or end with an apostrophe. Change it, then try again.`,
  nameReserved: (name: string) => `Excel keeps the name "${name}" for itself. Choose another name, then try again.`,
  nameTwice: (name: string) => `Two new sheets would be named "${name}". Choose another name, then try again.`,
  outside:
    "This page is the panel of a spreadsheet add-in and works inside Excel only. Without Excel, open the browser workbook: it has the same panel and functions.",
  noLibrary: "The Office library did not load, so the panel cannot reach the workbook. Check the connection, then open the panel again.",
  oldExcel: "The panel needs Excel 2021, Microsoft 365 or Excel on the web. The worksheet functions may work without it.",
}; // prettier-ignore

const byCode: Record<string, string | undefined> = {
  InvalidOperationInCellEditMode: messages.editing,
  ItemNotFound: messages.gone,
  InvalidSelection: messages.noCell,
  AccessDenied: messages.locked,
  RequestPayloadSizeLimitExceeded: messages.tooLarge,
  ResponsePayloadSizeLimitExceeded: messages.tooLarge,
  ApiNotFound: messages.tooOld,
};

/** The sentence for one of Excel's error codes; `detail` is Excel's own, for a code that is not ours to explain. */
export function sentence(code: string, detail: string): string {
  return byCode[code] ?? messages.unknown(`${detail.replace(/\.$/, "")} (${code})`);
}
