/** How a cell of a document looks, in terms that every host can carry. Colors are RRGGBB, sizes are points. */
export interface CellStyle {
  bold?: boolean;
  italic?: boolean;
  size?: number;
  color?: string;
  fill?: string;
  align?: "left" | "center" | "right";
  wrap?: boolean;
  /** Number format in the spreadsheet's English notation. */
  format?: string;
  /** A line above or below, or a box around. */
  line?: "top" | "bottom" | "box";
}

const ink = "1F2933";
const faint = "52606D";
const inputFill = "FFF8DB";

/** Money with its sign, as letters write it. */
const dollars = "$#,##0.00;-$#,##0.00";

const inputNumber: CellStyle = {
  size: 10,
  color: "1B3A6B",
  fill: inputFill,
  line: "box",
  align: "right",
};

/** The looks that documents use, each good in black and white. */
export const styles = {
  key: { color: ink, size: 10 },
  title: { bold: true, size: 16, color: ink },
  subtitle: { size: 10, color: faint },
  heading: { bold: true, size: 11, color: ink, fill: "E4E7EB", line: "bottom" },
  headingRight: { bold: true, size: 11, color: ink, fill: "E4E7EB", line: "bottom", align: "right" },
  headingCenter: { bold: true, size: 11, color: ink, fill: "E4E7EB", line: "bottom", align: "center" },
  section: { bold: true, size: 10, color: ink, fill: "F1F3F5" },
  sectionRight: { size: 9, color: faint, fill: "F1F3F5", align: "right" },
  sectionSum: {
    bold: true,
    size: 10,
    color: ink,
    fill: "F1F3F5",
    format: "#,##0.00;-#,##0.00;",
    align: "right",
  },
  ownText: { size: 10, color: "1B3A6B", line: "bottom", align: "left" },
  ownNumber: { size: 10, color: "1B3A6B", line: "bottom", format: "#,##0.00##", align: "right" },
  label: { size: 10, color: ink },
  note: { size: 9, color: faint, italic: true },
  priceNote: { size: 9, color: faint, italic: true, align: "left", format: '"price of "yyyy-mm-dd;;' },
  caution: { size: 9, color: ink, wrap: true },
  warning: { size: 10, bold: true, color: "8A1C1C", wrap: true },
  text: { size: 10, color: ink, align: "left" },
  unit: { size: 10, color: faint, align: "center" },
  mark: { size: 9, color: faint, align: "center" },
  count: { size: 10, color: ink, format: "#,##0", align: "right" },
  figure: { size: 10, color: ink, format: "#,##0.00", align: "right" },
  percent: { size: 10, color: ink, format: "0.0", align: "right" },
  feetInches: { size: 10, color: ink, align: "right" },
  money: { size: 10, color: ink, format: "#,##0.00", align: "right" },
  ownAmount: { size: 10, color: ink, format: "#,##0.00", align: "right", line: "bottom" },
  total: { size: 12, bold: true, color: ink, format: "#,##0.00", align: "right", line: "top" },
  totalUnit: { size: 10, color: faint, line: "top", align: "center" },
  totalLabel: { size: 12, bold: true, color: ink, line: "top" },
  inputNumber,
  inputFeet: { ...inputNumber, format: 'General" ft"' },
  inputYards: { ...inputNumber, format: 'General" cu yd"' },
  inputPounds: { ...inputNumber, format: 'General" lb"' },
  inputMoney: { size: 10, color: "1B3A6B", fill: inputFill, line: "box", format: "#,##0.00", align: "right" },
  inputDate: {
    size: 10,
    color: "1B3A6B",
    fill: inputFill,
    line: "box",
    format: "yyyy-mm-dd",
    align: "center",
  },
  limitDate: { size: 9, color: faint, italic: true, align: "center", format: '"before "yyyy-mm-dd;;' },
  settingLabel: { size: 9, color: faint, align: "right", wrap: true },
  /** A text that other cells read and nobody needs to see. */
  unseen: { size: 8, color: faint, format: ";;;" },
  inputWord: { size: 10, color: "1B3A6B", fill: inputFill, line: "box", align: "center" },
  inputText: { size: 10, color: "1B3A6B", fill: inputFill, line: "box", align: "left" },
  fixed: { size: 10, color: ink, align: "right" },
  crewTitle: { size: 20, bold: true, color: ink },
  crewIssued: { size: 13, bold: true, color: ink, align: "right" },
  crewJob: { size: 13, color: ink },
  crewWarning: { size: 13, bold: true, color: "8A1C1C" },
  crewSection: { size: 12, bold: true, color: ink, fill: "E4E7EB", line: "bottom" },
  crewLabel: { size: 12, color: ink },
  crewSize: { size: 12, bold: true, color: ink, align: "right" },
  crewFigure: { size: 11, color: ink, format: "0.00", align: "right" },
  crewDegrees: { size: 11, color: ink, format: "0.0", align: "right" },
  crewWords: { size: 12, bold: true, color: ink, align: "left" },
  crewUnit: { size: 10, color: ink, align: "left" },
  crewCaution: { size: 11, bold: true, color: ink, wrap: true },
  crewNote: { size: 10, color: ink, wrap: true },
  crewHead: { size: 12, bold: true, color: ink, fill: "E4E7EB", align: "center" },
  crewSubhead: { size: 9, color: ink, fill: "E4E7EB", align: "center", line: "bottom" },
  crewStake: { size: 13, bold: true, color: ink, align: "center", line: "bottom" },
  crewLength: { size: 12, bold: true, color: ink, align: "right", line: "bottom" },
  crewDecimal: { size: 10, color: ink, format: "0.00", align: "right", line: "bottom" },
  crewAngle: { size: 11, color: ink, format: "0.0", align: "right", line: "bottom" },
  crewInches: { size: 12, bold: true, color: ink, align: "right", line: "bottom" },
  crewCut: { size: 12, bold: true, color: ink, align: "left", line: "bottom" },
  crewWord: { size: 10, color: ink, align: "center", line: "bottom" },
  crewHeight: { size: 11, bold: true, color: ink, align: "right", line: "bottom" },
  inputHeight: { ...inputNumber, size: 11, format: "0.00" },
  crewBlank: { size: 12, color: ink, line: "box" },
  place: { size: 10, color: ink, format: "0.0000", align: "right" },
  letterTitle: { size: 22, bold: true, color: ink },
  letterNumber: { size: 12, bold: true, color: ink, align: "right" },
  letterOwnNumber: { size: 12, bold: true, color: ink, align: "right", format: '"No. "0' },
  letterBusiness: { size: 12, bold: true, color: ink, align: "left" },
  letterHeading: { size: 11, bold: true, color: ink, line: "bottom", align: "left" },
  letterWords: { size: 10, color: ink, align: "left", wrap: true },
  letterStrong: { size: 10, bold: true, color: ink, align: "left", wrap: true },
  letterSmall: { size: 9, color: faint, align: "left", wrap: true },
  letterLabel: { size: 10, color: faint, align: "left" },
  letterFact: { size: 10, color: ink, align: "left" },
  letterFigure: { size: 10, color: ink, align: "right", format: "#,##0.0" },
  letterUnit: { size: 10, color: ink, align: "left" },
  letterOwn: { size: 10, color: ink, align: "left", wrap: true },
  letterOwnMoney: { size: 10, color: ink, align: "right", format: dollars },
  letterMoney: { size: 10, color: ink, align: "right", format: dollars },
  letterRight: { size: 10, color: ink, align: "right" },
  letterOwnPercent: { size: 10, color: ink, align: "right", format: 'General" %"' },
  letterOwnWord: { size: 10, color: ink, align: "center" },
  letterChange: { size: 10, color: ink, align: "right", format: '"+"$#,##0.00;-$#,##0.00;$0.00' },
  letterTotalLabel: { size: 14, bold: true, color: ink, align: "left", line: "top" },
  letterTotal: { size: 13, bold: true, color: ink, align: "right", line: "top", format: dollars },
  letterHead: { size: 9, bold: true, color: ink, fill: "F1F3F5", align: "left" },
  letterHeadCenter: { size: 9, bold: true, color: ink, fill: "F1F3F5", align: "center" },
  letterHeadRight: { size: 9, bold: true, color: ink, fill: "F1F3F5", align: "right" },
  letterSigned: { size: 9, color: faint, align: "left", line: "top" },
  itemCount: { size: 10, color: ink, format: "#,##0", align: "right", wrap: true },
  itemFigure: { size: 10, color: ink, format: "#,##0.00", align: "right", wrap: true },
  itemUnit: { size: 10, color: faint, align: "center", wrap: true },
  itemMoney: { size: 10, color: ink, align: "right", format: dollars, wrap: true },
  itemMark: { size: 9, color: faint, align: "center", wrap: true },
  fillMoney: { size: 10, color: ink, align: "right", format: "#,##0.00##", line: "box", wrap: true },
  fillWords: { size: 10, color: ink, align: "left", line: "box", wrap: true },
  sizeHead: { size: 11, bold: true, color: ink, fill: "F1F3F5", align: "right", line: "bottom" },
  sizeText: { size: 10, color: ink, align: "right" },
  sizeFigure: { size: 10, color: ink, align: "right", format: "#,##0.0" },
  sizeCount: { size: 10, color: ink, align: "right", format: "#,##0" },
  sizeMoney: { size: 10, color: ink, align: "right", format: dollars },
  sizePrice: { size: 11, bold: true, color: ink, align: "right", line: "top", format: dollars },
  sizeWord: { size: 9, color: ink, align: "right" },
  sizeFitsHead: { size: 11, bold: true, color: "FFFFFF", fill: "3E4C59", align: "right", line: "bottom" },
  sizeFitsPrice: {
    size: 11,
    bold: true,
    color: ink,
    fill: "D3DAE1",
    align: "right",
    line: "top",
    format: dollars,
  },
  sizeFitsWord: { size: 9, bold: true, color: ink, fill: "D3DAE1", align: "right" },
  letterStamp: { size: 22, bold: true, color: "8A1C1C", align: "center" },
} satisfies Record<string, CellStyle>;

/** The color of what a cell says that is fixed in a copy, RRGGBB. */
export const fixedInk = ink;

/** True for the color behind an input's content, in any notation of RRGGBB. */
export const isInputFill = (color: string | undefined) => color?.replace("#", "").toUpperCase() === inputFill;

/** The name of one of the looks above. */
export type StyleName = keyof typeof styles;

/** The look of that name, as data a host can read. */
export const styleOf = (name: StyleName): CellStyle => styles[name];
