import { fieldsOf, type Field, type FieldValue } from "../../src/estimate/fields";
import { structureOf } from "../../src/estimate/job";
import { writeXlsx } from "../../src/hosts/xlsx/xlsx";
import { contentOfPlans } from "../../src/sheets/calculate";
import { plainForm } from "../../src/sheets/plain";
import { type WorkbookContent } from "../../src/sheets/workbook-content";
import { numbersAsCell } from "../../src/units/number-list";
import { pen } from "../sheets/documents/books";
import { placesIn } from "../sheets/typed-plan";
import { holdEstimates, plansOf, randomBooks, type Book } from "./job-books";
import { officeTest, recalculate } from "./libreoffice";

const plainCopy = (book: Book) => plainForm(contentOfPlans(plansOf(book), pen), pen);

/** Another answer that the field allows. */
function another(field: Field, k: number): FieldValue {
  if (field.options) return field.options[k % field.options.length];
  if (!field.range) return `changed ${k}`;
  const [least, most] = field.range;
  const value = least + ((most - least) * ((k * 37) % 100)) / 100;
  if (field.many) {
    const count = field.many[k % field.many.length];
    return numbersAsCell(Array.from({ length: count }, () => Math.round(value)));
  }
  return field.kind === "count" ? Math.round(value) % 25 : Math.round(value * 4) / 4;
}

/**
 * Changes every input of a plain copy that is still live, in the file and in the jobs alike; those that its numbers of
 * the time of writing rest on stay, since a sheet says that it is out of date where they do not.
 */
function changeInputs(
  book: Book,
  copy: ReturnType<typeof plainCopy>,
): { book: Book; content: WorkbookContent; changed: number } {
  const fixed = new Set(copy.fixed.map(({ sheet, row, column }) => `${sheet},${row},${column}`));
  let changed = 0;
  const jobs = book.jobs.map(({ name, job, own }, k) => {
    const places = placesIn[structureOf(job)];
    const live = fieldsOf(structureOf(job)).filter(({ key, decides, settled }) => {
      if (settled || (decides && `${key}_written` in places)) return false;
      // Which gates are by other decides whether a run may pass them.
      if (key === "gates_by_other" && job.fence_by_other !== null) return false;
      const { row, column } = places[key];
      return !fixed.has(`${name},${row},${column}`);
    });
    const answers = Object.fromEntries(live.map((field, n) => [field.key, another(field, n + k)]));
    changed += live.length;
    const sheet = copy.content.sheets.find((one) => one.name === name)!;
    for (const [key, value] of Object.entries(answers)) {
      const { row, column } = places[key];
      const cell = sheet.cells.find((one) => one.row === row && one.column === column);
      if (cell) cell.value = value;
      else sheet.cells.push({ row, column, value });
    }
    return { name, job: { ...job, ...answers }, own };
  });
  return { book: { ...book, jobs }, content: copy.content, changed };
}

describe("estimates in LibreOffice", () => {
  officeTest(
    "stay in agreement with the figures when every input that a plain copy leaves live is changed",
    async () => {
      const made = randomBooks(2, 15).map((book) => changeInputs(book, plainCopy(book)));
      expect(made.reduce((sum, { changed }) => sum + changed, 0)).toBeGreaterThan(30 * 8);
      const recalculated = await recalculate(
        await Promise.all(made.map(({ content }) => writeXlsx(content))),
      );
      recalculated.forEach((content, k) => holdEstimates(content, made[k].book));
    },
    300_000,
  );
});
