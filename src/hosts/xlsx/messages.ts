import { HostError } from "../host";

const several = (count: number, one: string, more: string) => (count === 1 ? `1 ${one}` : `${count} ${more}`);

/** Why a file was refused. */
export const refusals = {
  notWorkbook: () =>
    new HostError(
      "This file is no .xlsx workbook. Open it in a spreadsheet and save it as .xlsx, then try again.",
    ),
  locked: () =>
    new HostError(
      "This file is locked with a password or has the older .xls format. Save it as .xlsx without a password, then try again.",
    ),
  tooLarge: (megabytes: number) =>
    new HostError(
      `This file is larger than can be opened here: at most ${megabytes} MB once unpacked. Delete pictures or sheets that are not needed, then try again.`,
    ),
  damaged: () =>
    new HostError(
      "This workbook is damaged and could not be read. Open it in a spreadsheet, let it be repaired, save it, then try again.",
    ),
  outsideSheet: () =>
    new HostError("This workbook names rows or columns that no sheet has, so it could not be read."),
  textTooLong: (sheet: string, cell: string) =>
    new HostError(
      `${cell} on "${sheet}" holds more than 32,767 characters, which no .xlsx cell can. Shorten it, then try again.`,
    ),
  sheetName: (name: string) =>
    new HostError(
      `"${name}" cannot name a sheet in an .xlsx file: a name has 1 to 31 characters and none of : \\ / ? * [ ]. Rename it, then try again.`,
    ),
};

/** What a file had that could not be carried, each a sentence of its own. */
export const losses: Record<string, (count: number) => string> = {
  charts: (n) => `${several(n, "chart was", "charts were")} left out.`,
  pictures: (n) => `${several(n, "picture was", "pictures were")} left out.`,
  shapes: (n) => `Shapes and drawings on ${several(n, "sheet were", "sheets were")} left out.`,
  pivots: (n) =>
    `${several(n, "pivot table was", "pivot tables were")} left out; the cells it filled keep what they show.`,
  tables: (n) => `${several(n, "table became", "tables became")} plain cells.`,
  macros: () => "Macros were left out.",
  links: (n) =>
    `${several(n, "link to another workbook was", "links to other workbooks were")} left out; cells keep what they show.`,
  names: (n) =>
    `${several(n, "defined name was", "defined names were")} left out; formulas that use one show #NAME?.`,
  threads: (n) => `Threads of comments on ${several(n, "sheet were", "sheets were")} left out.`,
  chartSheets: (n) =>
    `${several(n, "sheet that is one chart was", "sheets that are one chart were")} left out.`,
  hidden: (n) => `${several(n, "hidden sheet is", "hidden sheets are")} shown here.`,
  conditional: (n) => `Conditional formatting on ${several(n, "sheet was", "sheets were")} left out.`,
  protection: (n) => `The protection of ${several(n, "sheet was", "sheets were")} left out.`,
  filters: (n) => `The filter on ${several(n, "sheet was", "sheets were")} left out.`,
  hyperlinks: (n) => `Links on ${several(n, "sheet were", "sheets were")} left out; their text stays.`,
  validations: (n) => `Rules for what ${several(n, "cell accepts", "cells accept")} were left out.`,
  wideValidations: (n) =>
    `Rules for what whole rows or columns accept were left out on ${several(n, "sheet", "sheets")}.`,
  wideMerges: (n) => `Very large merged areas were left out on ${several(n, "sheet", "sheets")}.`,
  longFormulas: (n) =>
    `${several(n, "formula", "formulas")} over 8192 characters became what ${n === 1 ? "it shows" : "they show"}.`,
  arrays: (n) =>
    `${several(n, "array formula", "array formulas")} became what ${n === 1 ? "it shows" : "they show"}.`,
  formulas: (n) =>
    `${several(n, "formula", "formulas")} that could not be read became what ${n === 1 ? "it shows" : "they show"}.`,
  richText: (n) => `${several(n, "text", "texts")} with more than one font became plain.`,
};
