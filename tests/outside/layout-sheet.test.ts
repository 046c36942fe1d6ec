import { newJob, type Job } from "../../src/estimate/job";
import { panelPen } from "../../src/estimate/panel-pen";
import { writeXlsx } from "../../src/hosts/xlsx/xlsx";
import { contentOfPlans } from "../../src/sheets/calculate";
import { columns, rows } from "../../src/sheets/layout-places";
import { labels } from "../../src/sheets/layout-messages";
import { layoutRows } from "../../src/sheets/layout-sheet";
import { plainForm } from "../../src/sheets/plain";
import { bookOf, layoutOf, pen, shownAt, stakeRows } from "../sheets/layouts";
import { estimatePlaces } from "../sheets/typed-plan";
import { agree, told } from "./books";
import { officeTest, recalculate } from "./libreoffice";

const jobs: Job[] = [
  { ...newJob(), gate_1: 10 },
  { ...newJob(), size: 84, panel_1: 16, panel_2: 10, gate_1: 12, gate_2: 8, pin_gap: 0.5, gate_bearing: 33, language: "Spanish" },
  { ...newJob(), size: 50, panel_1: 10, gate_1: null, gate_bearing: 359.5, north: "true" },
  { ...newJob(), size: 190, panel_1: 10, gate_1: 10, gate_2: 12, gate_bearing: 270 },
]; // prettier-ignore

const copy = (job: Job) => plainForm(contentOfPlans(bookOf(job), pen), pen).content;

describe("layout sheets in LibreOffice", () => {
  officeTest(
    "show every figure as it was worked out here, in plain copies recalculated",
    async () => {
      const books = jobs.map(copy);
      const recalculated = await recalculate(await Promise.all(books.map((book) => writeXlsx(book))));
      let held = 0;
      recalculated.forEach((content, k) => {
        const [ours, theirs] = [books[k], content].map(({ sheets }) => sheets.find(({ name }) => name === "Layout")!);
        for (const { row, column, value } of ours.cells) {
          const shown = shownAt(theirs, row, column);
          if (!agree(shown, value)) throw new Error(`${k}: row ${row + 1}, column ${column}: ${told(shown)}, here ${told(value)}`);
          held++;
        }
        const stakes = stakeRows(theirs, jobs[k]);
        expect(stakes.map(({ running }) => running)).toEqual([...stakes.map(({ running }) => running)].sort((a, b) => a - b));
        const { first } = layoutRows(layoutOf(jobs[k]));
        expect(shownAt(theirs, first + stakes.length, columns.running + 1)).toBeCloseTo(panelPen(jobs[k]).distanceAround, 9);
        expect(shownAt(theirs, rows.warning, columns.stake) ?? "").toBe("");
      });
      expect(held).toBeGreaterThan(4 * 400);
    },
    200_000,
  );

  officeTest(
    "say OUT OF DATE once an input that stays live in the copy is changed",
    async () => {
      const book = copy(jobs[0]);
      const { row, column } = estimatePlaces.gate_bearing;
      const input = book.sheets.find(({ name }) => name === "Estimate")!.cells.find((cell) => cell.row === row && cell.column === column)!;
      input.value = 90;
      const [content] = await recalculate([await writeXlsx(book)]);
      const layout = content.sheets.find(({ name }) => name === "Layout")!;
      expect(shownAt(layout, rows.warning, columns.stake)).toBe(labels.outOfDate.en);
    },
    200_000,
  );
}); // prettier-ignore
