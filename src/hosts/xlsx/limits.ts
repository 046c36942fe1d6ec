import { columnNumber } from "../../sheets/address";
import { COLUMNS, LONGEST_FORMULA, ROWS } from "../../sheets/notation";
import { refusals } from "./messages";
import { element, tags } from "./markup";

/** Cells that one rule or merged area may cover: the file library makes an object for each. */
const WIDEST = 20_000;

/**
 * A sheet's markup with what would take the reader's time or memory without end left out, and what that was.
 * Throws a HostError where it names rows or columns that no sheet has.
 */
export function withinLimits(xml: string): { xml: string; left: string[] } {
  const rows = [...xml.matchAll(/<row\s[^<>]*?\br="(\d+)"/g)].map(([, row]) => Number(row));
  const columns = tags(xml, "col").map(({ max }) => Number(max));
  const cells = [...xml.matchAll(/<c\s[^<>]*?\br="([A-Z]*)(\d*)"/g)];
  const outside =
    rows.some((row) => row < 1 || row > ROWS) ||
    columns.some((column) => !(column <= COLUMNS)) ||
    cells.some(
      ([, name, row]) => !name || name.length > 3 || columnNumber(name) >= COLUMNS || !(Number(row) <= ROWS),
    );
  if (outside) throw refusals.outsideSheet();
  const left: string[] = [];
  let kept = xml.replace(tooLong, () => {
    left.push("longFormulas");
    return "";
  });
  const rules = sum(tags(kept, "dataValidation").map(({ sqref = "" }) => covered(sqref)));
  const merges = sum(tags(kept, "mergeCell").map(({ ref = "" }) => covered(ref)));
  if (rules > WIDEST) {
    left.push("wideValidations");
    kept = kept.replace(element(kept, "dataValidations"), "");
  }
  if (merges > WIDEST) {
    left.push("wideMerges");
    kept = kept.replace(element(kept, "mergeCells"), "");
  }
  return { xml: kept, left };
}

const tooLong = new RegExp(`<f(?:\\s[^<>]*)?>[^<]{${LONGEST_FORMULA},}</f>`, "g");

const sum = (numbers: number[]) => numbers.reduce((all, one) => all + one, 0);

/** How many cells a list of areas covers; what is no area covers more than any sheet. */
function covered(areas: string): number {
  return sum(
    areas.split(/\s+/).map((area) => {
      const [, left, top, right = left, bottom = top] = /^\$?([A-Z]{1,3})\$?(\d+)(?::\$?([A-Z]{1,3})\$?(\d+))?$/.exec(area) ?? []; // prettier-ignore
      const wide = Math.abs(columnNumber(right ?? "") - columnNumber(left ?? "")) + 1;
      return left ? wide * (Math.abs(Number(bottom) - Number(top)) + 1) : Infinity;
    }),
  );
}
