/** What the section of own templates can say. */
export const messages = {
  nothingToFill: (sheet: string) =>
    `${sheet} names no field in braces that can be filled. Select the sheet of your template first.`,
  copyOf: (sheet: string) => `${sheet.slice(0, 22)} filled`,
  filled: (name: string, cells: number) =>
    `Written to ${name}: ${cells === 1 ? "1 cell points" : `${cells} cells point`} at the estimate. Your template stays as it is.`,
  unfilled: (cells: number, sentences: readonly string[]) =>
    `${cells === 1 ? "1 cell keeps its braces" : `${cells} cells keep their braces`}. ${sentences.join(" ")}`,
  holdsSomething: (where: string) => `${where} holds something. Select an empty cell, or type the braces into your text yourself.`,
  inserted: (braces: string, where: string) => `${braces} stands in ${where}.`,
  tooLarge: (name: string, megabytes: number) => `${name} is larger than ${megabytes} MB. Save the sheets of your template in a file by themselves.`,
  notXlsx: (name: string) => `${name} is no .xlsx file. Save it as .xlsx in a spreadsheet, then try again.`,
  added: (names: readonly string[]) =>
    `Added: ${names.join(", ")}.${names.length > 1 ? ` ${names[0]} is shown.` : ""}`,
}; // prettier-ignore
