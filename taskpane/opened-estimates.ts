import { estimateMark } from "../src/sheets/estimate-layout";
import { type WorkbookContent } from "../src/sheets/workbook-content";

const say = {
  fixed: (sheet: string) =>
    `"${sheet}" is an estimate with fixed figures: select it and press "Make it live again" in the panel, which draws its plan anew.`,
  live: (sheet: string) =>
    `"${sheet}" is a live estimate without its plan: "Write as a new estimate" in the panel draws it anew.`,
};

/** What to do about the estimates of an opened file, a sentence each: a file gives their pictures no way in. */
export const aboutEstimates = ({ sheets }: WorkbookContent): string[] =>
  sheets
    .filter(({ cells }) =>
      cells.some(({ row, column, value }) => row === 0 && column === 0 && value === estimateMark),
    )
    .map(({ name, cells }) =>
      cells.some(({ formula }) => /\bPEN\./i.test(formula ?? "")) ? say.live(name) : say.fixed(name),
    );
