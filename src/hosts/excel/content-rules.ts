import { messages as sheetMessages } from "../../sheets/messages";
import { type Validation } from "../../sheets/plan";
import { type CellData } from "../../sheets/workbook-content";
import { placeOf, spotsIn, type Area, type Spot } from "./areas";
import { once } from "./session";

/** Cells of a sheet with a rule beyond which none is asked for, as where whole columns have one. */
const mostRules = 1000;

/** What a cell accepts, and the remark that it is fixed in a copy. */
export type Ruled = Pick<CellData, "accepts" | "note">;

/** Asks where a sheet has rules for what its cells accept. */
export const askRuled = (sheet: Excel.Worksheet): Excel.RangeAreas =>
  once(once(sheet.getRange()).getSpecialCellsOrNullObject("DataValidations")).load({ address: true });

/** Asks for the rules of the cells in these areas, as far as they lie in the used one. */
export function askRules(sheet: Excel.Worksheet, ruled: Area[], used: Area) {
  const areas = ruled.map((area) => overlap(area, used));
  const count = areas.reduce((sum, { top, left, bottom, right }) => sum + Math.max(0, bottom - top + 1) * Math.max(0, right - left + 1), 0);
  const asked = count > mostRules ? [] : areas.flatMap(spotsIn).map((spot) => ({ ...spot, validation: askRule(sheet, spot) }));
  return { count, asked };
} // prettier-ignore

const askRule = (sheet: Excel.Worksheet, { row, column }: Spot) =>
  once(sheet.getRangeByIndexes(row, column, 1, 1)).dataValidation.load({
    rule: true,
    errorAlert: true,
    prompt: true,
  });

/** What the cells accept, by "row column", and how many rules say more than a span of numbers or a list of texts. */
export function rulesOf({ count, asked }: ReturnType<typeof askRules>): { rules: Map<string, Ruled>; lost: number } {
  const read = asked.flatMap(({ row, column, validation }): [string, Ruled][] => {
    if (validation.prompt.message === sheetMessages.fixedInCopy) return [[placeOf({ row, column }), { note: sheetMessages.fixedInCopy }]];
    const accepts = acceptedBy(validation);
    return accepts ? [[placeOf({ row, column }), { accepts }]] : [];
  });
  return { rules: new Map(read), lost: count - read.length };
} // prettier-ignore

/** A rule in our terms; undefined where it only warns, or rests on other cells. */
function acceptedBy({ rule, errorAlert }: Excel.DataValidation): Validation | undefined {
  const { message, showAlert, style } = errorAlert;
  if (!showAlert || style !== "Stop") return undefined;
  const source = rule.list?.source;
  if (typeof source === "string" && !source.startsWith("="))
    return { kind: "list", options: source.split(",").map((option) => option.trim()), message };
  const span = rule.wholeNumber ?? rule.decimal;
  const [least, most] = [Number(span?.formula1), Number(span?.formula2)];
  if (span?.operator !== "Between" || !(least <= most)) return undefined;
  return { kind: "number", least, most, ...(rule.wholeNumber ? { whole: true } : {}), message };
}

const overlap = (one: Area, other: Area): Area => ({
  top: Math.max(one.top, other.top),
  left: Math.max(one.left, other.left),
  bottom: Math.min(one.bottom, other.bottom),
  right: Math.min(one.right, other.right),
});
