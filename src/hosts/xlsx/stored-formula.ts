/** Functions younger than the file format: a file stores them with a prefix that nobody types. */
const younger =
  "IFS|SWITCH|CONCAT|TEXTJOIN|MAXIFS|MINIFS|XLOOKUP|XMATCH|LET|LAMBDA|FILTER|SORT|SORTBY|UNIQUE|SEQUENCE|IFNA|XOR|NUMBERVALUE|ISFORMULA|FORMULATEXT|DAYS|CEILING\\.MATH|FLOOR\\.MATH";
const entered = new RegExp(`(?<![\\w.])(${younger})(?=\\()`, "gi");

/** What stands outside of quotes in a formula, changed; texts and quoted sheet names stay as they are. */
const outsideQuotes = (formula: string, change: (part: string) => string) =>
  formula
    .split(/("(?:[^"]|"")*"|'(?:[^']|'')*')/)
    .map((part, k) => (k % 2 ? part : change(part)))
    .join("");

/** A formula as it is typed (with its equals sign) in the notation of a file. */
export const storedFormula = (formula: string) =>
  outsideQuotes(formula.replace(/^=/, ""), (part) => part.replace(entered, "_xlfn.$1"));

/** A formula of a file as it is typed, with its equals sign; stored functions of this add-in get their names back. */
export const enteredFormula = (stored: string) =>
  `=${outsideQuotes(stored, (part) =>
    part.replace(/_xlfn\._xlws\.|_xlfn\.|_xlws\./gi, "").replace(/_xldudf_PEN[._]/gi, "PEN."),
  )}`;
