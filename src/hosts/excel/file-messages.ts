/** What this host can say of files that come in and go out; fetched with what does that, so that the panel opens sooner. */
export const fileMessages = {
  leftOfFile: "Some of the file's sheets may have been added: if you see them, delete them.",
  emptyFile: "This file has no sheet that Excel can add.",
  /** What Excel says of a file whose sheets it does not add, by its code. */
  fileRefused: {
    InvalidArgument: "Excel could not read this file: it is damaged, locked with a password, or no .xlsx workbook. Open it by itself, save it as .xlsx, then try again.",
    UnsupportedFeature: "Excel on the web adds no sheet with a chart, a comment, a pivot table or a slicer from a file. Take these out, or add it in Excel on the desktop.",
  } as Record<string, string | undefined>,
  lost: {
    comments: (n: number) => `${n === 1 ? "1 comment was" : `${n} comments were`} left out.`,
    conditional: "Conditional formatting was left out.",
    rules: (n: number) => `Rules for what ${n === 1 ? "1 cell accepts" : `${n} cells accept`} were left out.`,
    notes: "Notes on its cells, if it has any, were left out.",
  },
}; // prettier-ignore
