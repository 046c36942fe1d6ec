import { type DataValidation } from "exceljs";
import { type Validation } from "../../sheets/plan";

const LONGEST_LIST = 255;

/**
 * What a cell accepts as a rule of the file. A list that the format cannot hold (a comma in an option, more than 255
 * characters) gives undefined: the cell then accepts anything.
 */
export function fileRule(accepts: Validation): DataValidation | undefined {
  const said = {
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: "stop",
    error: accepts.message.slice(0, 255),
  };
  if (accepts.kind === "number")
    return {
      type: accepts.whole ? "whole" : "decimal",
      operator: "between",
      formulae: [accepts.least, accepts.most],
      ...said,
    };
  const options = accepts.options.join(",");
  if (options.length > LONGEST_LIST || accepts.options.some((option) => /[",]/.test(option)))
    return undefined;
  return { type: "list", formulae: [`"${options}"`], ...said };
}

/** A file's rule in our terms, or undefined where it says more than a span of numbers or a list of texts. */
export function ruleFromFile(rule: DataValidation): Validation | undefined {
  const { type, formulae = [], operator = "between", error: message = "" } = rule as DataValidation & { formulae?: unknown[] }; // prettier-ignore
  const [first, second] = formulae;
  if (type === "list") {
    const options = /^"([^"]*)"$/.exec(String(first))?.[1].split(",");
    return options && { kind: "list", options: options.map((option) => option.trim()), message };
  }
  const [least, most] = [Number(first), Number(second)];
  if ((type !== "whole" && type !== "decimal") || operator !== "between" || !(least <= most))
    return undefined;
  return { kind: "number", least, most, ...(type === "whole" ? { whole: true } : {}), message };
}
