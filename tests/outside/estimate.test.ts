import fc from "fast-check";
import { calls } from "../../functions/calls";
import { estimate } from "../../src/estimate/estimate";
import { fieldsOf, type Field, type FieldValue } from "../../src/estimate/fields";
import { figuresOf } from "../../src/estimate/figures";
import { structureOf, type Job } from "../../src/estimate/job";
import { type PriceRow } from "../../src/estimate/prices";
import { writeXlsx } from "../../src/hosts/xlsx/xlsx";
import { contentOfPlans } from "../../src/sheets/calculate";
import { estimatePlan } from "../../src/sheets/estimate";
import { ownChanges, readEstimate } from "../../src/sheets/keyed";
import { plainForm } from "../../src/sheets/plain";
import { pricesPlan } from "../../src/sheets/prices";
import { pricesName } from "../../src/sheets/prices-layout";
import { type WorkbookContent } from "../../src/sheets/workbook-content";
import { Refusal } from "../../src/units/refusal";
import { ownFor, randomJob, randomOwn, randomPrices, type TypedLine } from "../estimate/random-job";
import { shownBy } from "../sheets/shown";
import { placesIn, withOwnLines } from "../sheets/typed-plan";
import { officeTest, recalculate } from "./libreoffice";
import { numbersAsCell } from "../../src/units/number-list";

interface Book {
  prices: PriceRow[];
  jobs: { job: Job; own: TypedLine[] }[];
}

const pen = (name: string) => calls[name];
const seed = 20_260;

const hasAnswer = ({ job, own }: Book["jobs"][number], prices: PriceRow[]) => {
  try {
    return Boolean(estimate(job, prices, own));
  } catch (refusal) {
    if (refusal instanceof Refusal) return false;
    throw refusal;
  }
};

/** Workbooks of random jobs that have an answer, each on its own prices. */
function books(count: number, jobsEach: number): Book[] {
  const many = fc.sample(fc.record({ job: randomJob, own: randomOwn }), {
    seed,
    numRuns: count * jobsEach * 4,
  });
  return fc.sample(randomPrices, { seed, numRuns: count }).map((prices) => {
    const jobs: Book["jobs"] = [];
    while (jobs.length < jobsEach) {
      const next = many.pop()!;
      next.own = ownFor(next.job, next.own);
      if (hasAnswer(next, prices)) jobs.push(next);
    }
    return { prices, jobs };
  });
}

const nameOf = (k: number) => `Estimate ${k + 1}`;

const plainCopy = ({ prices, jobs }: Book) =>
  plainForm(
    contentOfPlans(
      [
        ...jobs.map(({ job, own }, k) => withOwnLines(estimatePlan(job, nameOf(k), pricesName), own)),
        pricesPlan(prices),
      ],
      pen,
    ),
    pen,
  );

/** Holds every keyed figure of a recalculated workbook against the figures of its jobs; returns how many were held. */
function hold(content: WorkbookContent, { prices, jobs }: Book): number {
  return jobs.reduce((held, { job, own }, k) => {
    const sheet = readEstimate(shownBy(content.sheets.find(({ name }) => name === nameOf(k))!));
    const figures = figuresOf(job, estimate(job, prices, own));
    expect({ job, changes: ownChanges(sheet, figures) }).toEqual({ job, changes: [] });
    return held + Object.keys(figures).length;
  }, 0);
}

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
  const jobs = book.jobs.map(({ job, own }, k) => {
    const places = placesIn[structureOf(job)];
    const live = fieldsOf(structureOf(job)).filter(({ key, decides, settled }) => {
      if (settled || (decides && `${key}_written` in places)) return false;
      // Which gates are by other decides whether a run may pass them.
      if (key === "gates_by_other" && job.fence_by_other !== null) return false;
      const { row, column } = places[key];
      return !fixed.has(`${nameOf(k)},${row},${column}`);
    });
    const answers = Object.fromEntries(live.map((field, n) => [field.key, another(field, n + k)]));
    changed += live.length;
    const sheet = copy.content.sheets.find(({ name }) => name === nameOf(k))!;
    for (const [key, value] of Object.entries(answers)) {
      const { row, column } = places[key];
      const cell = sheet.cells.find((one) => one.row === row && one.column === column);
      if (cell) cell.value = value;
      else sheet.cells.push({ row, column, value });
    }
    return { job: { ...job, ...answers }, own };
  });
  return { book: { ...book, jobs }, content: copy.content, changed };
}

describe("estimates in LibreOffice", () => {
  officeTest(
    "show the figures of 200 random jobs to the last digit, as plain copies recalculated in one run",
    async () => {
      const made = books(4, 50);
      const files = await Promise.all(made.map((book) => writeXlsx(plainCopy(book).content)));
      const recalculated = await recalculate(files);
      const held = recalculated.reduce((sum, content, k) => sum + hold(content, made[k]), 0);
      expect(held).toBeGreaterThan(200 * 80);
    },
    300_000,
  );

  officeTest(
    "stay in agreement with the figures when every input that a plain copy leaves live is changed",
    async () => {
      const made = books(2, 15).map((book) => changeInputs(book, plainCopy(book)));
      expect(made.reduce((sum, { changed }) => sum + changed, 0)).toBeGreaterThan(30 * 8);
      const recalculated = await recalculate(
        await Promise.all(made.map(({ content }) => writeXlsx(content))),
      );
      recalculated.forEach((content, k) => hold(content, made[k].book));
    },
    300_000,
  );
});
