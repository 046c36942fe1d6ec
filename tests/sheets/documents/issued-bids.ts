import { newJob, type Job } from "../../../src/estimate/job";
import { type FieldValue } from "../../../src/estimate/fields";
import { contentOfPlans } from "../../../src/sheets/calculate";
import { bidPlan } from "../../../src/sheets/documents/bid";
import { drawsOf } from "../../../src/sheets/documents/bid-draws";
import { changeOrderPlan } from "../../../src/sheets/documents/change-order";
import { contractOf, type Contract } from "../../../src/sheets/documents/contract";
import { issuedCells } from "../../../src/sheets/documents/issue";
import { readDocument, shownNumber } from "../../../src/sheets/documents/read";
import { cellOf } from "../../../src/sheets/documents/source";
import { expression } from "../../../src/sheets/expression";
import { type SheetPlan } from "../../../src/sheets/plan";
import { type SheetData } from "../../../src/sheets/workbook-content";
import { shownBy } from "../shown";
import { contentBy, pen, sourcesOf, worked } from "./books";

type Answers = Record<string, FieldValue>;

/** A bid of a job, issued under a number, as the plan of a sheet without anything live. */
export function issuedBid(changes: Partial<Job> = {}, number = 12): SheetPlan {
  const { plans, sources } = sourcesOf([{ ...newJob(), truck_1: 16, customer: "Invented customer", ...changes } as Job]);
  const answers = { business: "Invented pens", bid_number: number, bid_date: "2026-11-25", deposit: 10, milestone_share: 50 };
  const price = cellOf(sources[0], "total");
  const draft = bidPlan({ sources, price, answers, draws: drawsOf(answers), alternates: [] }, `Bid ${number}`);
  return issuedOf(draft, worked(plans, draft));
} // prettier-ignore

/** A draft issued, by what its sheet shows, as the plan of a sheet without anything live. */
export function issuedOf(draft: SheetPlan, sheet: SheetData): SheetPlan {
  const content = contentBy(sheet);
  for (const { row, column, says } of issuedCells(content, "2026-11-26")) content.values[row][column] = says as string | null;
  const cells = content.values.flatMap((row, at) =>
    row.map((value, column) => ({ row: at, column, says: value === null ? expression("") : expression(value as string), style: "text" as const })),
  );
  return { ...draft, name: `${draft.name} issued`, cells };
} // prettier-ignore

/** The contract that the first of these sheets, an issued bid, and the change orders after it make. */
export function contractIn(plans: SheetPlan[]): Contract {
  const shown = contentOfPlans(plans, pen).sheets.map(shownBy);
  return contractOf(shown[0], shown);
}

/** What a keyed cell of the last of these sheets shows; minus zero, which a cell shows as 0, is 0. */
export function figureIn(plans: SheetPlan[], key: string): number | undefined {
  const shown = shownNumber(readDocument(shownBy(contentOfPlans(plans, pen).sheets.at(-1)!), []), key);
  return shown === undefined ? undefined : shown + 0;
}

/** A change order to a contract. */
export const changeOrder = (
  contract: Contract,
  number: number,
  answers: Answers,
  name = `Change order ${number}`,
) => changeOrderPlan(contract, { change_number: number, ...answers }, name);
