import { type PlanCell, type Validation } from "../../sheets/plan";
import { areaAddress, groupBy, joinAddresses, rectangles } from "./areas";
import { once } from "./session";

/** Excel's own limits: a list in one text, and what it shows when an entry is refused. */
const longestList = 255;
const longestMessage = 225;

/** Tells Excel what the input cells accept; anything else typed there is refused with the input's message. */
export function validateCells(sheet: Excel.Worksheet, cells: PlanCell[]): void {
  const alike = groupBy(cells, ({ accepts }) => accepts && JSON.stringify(accepts));
  for (const [accepted, inputs] of alike) {
    const accepts = JSON.parse(accepted) as Validation;
    for (const addresses of joinAddresses(rectangles(inputs).map(areaAddress))) {
      const validation = once(sheet.getRanges(addresses)).dataValidation;
      validation.rule = ruleOf(accepts);
      validation.errorAlert = {
        title: "",
        message: accepts.message.slice(0, longestMessage),
        showAlert: true,
        style: "Stop",
      };
    }
  }
}

function ruleOf(accepts: Validation): Excel.DataValidationRule {
  if (accepts.kind === "list") {
    const source = accepts.options.join(",");
    if (source.length > longestList || accepts.options.some((option) => option.includes(",")))
      throw new RangeError("A list's options hold no comma and have at most 255 characters together.");
    return { list: { inCellDropDown: true, source } };
  }
  const between = { formula1: accepts.least, formula2: accepts.most, operator: "Between" as const };
  return accepts.whole ? { wholeNumber: between } : { decimal: between };
}
