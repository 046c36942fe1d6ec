import { HostError } from "../host";

/** What this host can say to a user. */
export const bundleMissing = (file: string) =>
  new HostError(
    `The worksheet functions could not be loaded: ${file} is missing beside this page. Build the project again, then reload.`,
  );

export const oneCell = (argument: string) => `${argument}: takes one cell, not a range.`;

export const failed = (name: string) =>
  `${name} failed on these cells. This is a fault of the function and not of your sheet.`;

/** Why a cell shows an error, where the function itself gave no reason. */
export const errorMeaning: Record<string, string> = {
  "#VALUE!": "A cell or text in this formula is not what it takes here.",
  "#N/A": "There is no answer to this question.",
  "#DIV/0!": "This formula divides by zero or by a blank cell.",
  "#REF!": "This formula points at a cell that no longer exists, or its result has no room.",
  "#NAME?": "This formula names a function or a word that the workbook does not know.",
  "#NUM!": "This formula gives a number that is too large or does not exist.",
  "#NULL!": "The two ranges in this formula share no cell.",
  "#SPILL!":
    "The cells that this result needs already hold something. Clear them, or put the formula elsewhere.",
  "#CALC!": "This formula cannot be worked out.",
};

export const readOnly = () =>
  new HostError(
    "This workbook is open in another tab, so nothing can be changed here. Close the other tab, then reload this one.",
  );

export const nameTaken = (name: string) =>
  new HostError(
    `There is already a sheet "${name}", so nothing was written. Rename that sheet or choose another name.`,
  );

export const nameRefused = (name: string) =>
  new HostError(
    `"${name}" cannot name a sheet, so nothing was written. A name has 1 to 31 characters and none of : \\ / ? * [ ].`,
  );

export const writeFailed = (name: string) =>
  new HostError(`The sheet "${name}" could not be written. The workbook is as it was before. Try once more.`);

export const noSheet = (name: string) =>
  new HostError(`There is no sheet "${name}" in this workbook. It may have been renamed or deleted.`);

export const cellHolds = (address: string) =>
  new HostError(`${address} holds something, so nothing was written. Select an empty cell.`);

const untouched = "The workbook you have open was not touched.";

export const notOurFile = () =>
  new HostError(`This is not a workbook file of this program, or it is damaged. ${untouched}`);

export const fileTooNew = () =>
  new HostError(
    `This file was saved by a newer version of this program. Update it, then open the file again. ${untouched}`,
  );

export const fileTooLarge = (megabytes: number) =>
  new HostError(`This file is larger than ${megabytes} MB, more than this workbook takes. ${untouched}`);

export const fileNotShown = () =>
  new HostError(`This file could not be shown: something in it is not as it should be. ${untouched}`);

/** What the page says about how its workbook came up. */
export const startNotes = {
  "read only":
    "This workbook is open in another tab. You can look at it here; to change it, close the other tab and reload this one.",
  "not kept":
    "This browser keeps nothing between visits, so the workbook is lost when this page closes. Save a copy before you leave.",
  "set aside":
    "The workbook kept in this browser could not be shown. It was set aside, not deleted, and a new one was started.",
  "let go": "The other tab has let go of this workbook. Reload this page to change it here.",
};

/** Said where something failed for which there is no sentence of its own. */
export const unexpected =
  "Something went wrong, and nothing was changed. Save a copy, reload this page, and try once more.";
