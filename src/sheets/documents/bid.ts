import { type FieldValue } from "../../estimate/fields";
import { type Material } from "../../estimate/layers";
import { isArena } from "../../estimate/pen";
import { type Expression } from "../expression";
import { type SheetPlan } from "../plan";
import { bidCountsOn, bidTerms, businessEntries } from "./bid-entries";
import { bidHeadRows, scopeRows } from "./bid-head";
import { priceRows, type Alternate, type DrawShare } from "./bid-price";
import { workRows } from "./bid-terms";
import { documentPlan } from "./document";
import { marks } from "./marks";
import { messages } from "./messages";
import { gap, headingRow, paragraphRow, saidRow, signatureRows, type Row } from "./rows";
import { builtFrom, exampleLines, type EstimateSource } from "./source";

/** What a bid says beside what its estimates do. */
export interface BidData {
  sources: readonly EstimateSource[];
  /** The cell that holds the price: the total of the one estimate, or of the sheet that brings several together. */
  price: Expression;
  /** Of several estimates whose loads are shared: the yards delivered for each yard that they need. */
  shares?: Record<Material, Expression>;
  /** The bid's own entries by key. */
  answers: Readonly<Record<string, FieldValue>>;
  /** What else could be built, each with its price plus or minus. */
  alternates: readonly Alternate[];
  /** How the price is paid, in whole percents; the last draw is what is left. */
  draws: readonly DrawShare[];
}

const say = messages.bid;

/**
 * Points of rows that go on one page: up to 830 at full width, a little more in smaller print. What is longer leaves
 * terms and signatures for the second page, never the signatures alone.
 */
const ONE_PAGE = 1000;

/**
 * The bid as a letter to the customer: who bids, what is built with its plan, the price, what it counts on, the terms
 * and the signatures. It points at the price alone: nothing of cost or markup stands in it. A bid on example prices
 * says so across it.
 */
export function bidPlan(data: BidData, name: string): SheetPlan {
  const { sources, answers } = data;
  const rows: Row[] = [
    ...(exampleLines(sources) > 0 ? [saidRow(() => say.example, "letterStamp", 30)] : []),
    ...bidHeadRows(sources, answers),
    ...scopeRows(data),
    ...priceRows(data),
    ...countsOn(sources),
    ...workRows(data),
    ...Object.values(bidTerms).map((entry) => paragraphRow(entry)),
    ...signatureRows([signer(answers), say.customerSigns], say.day),
    gap(6),
    { ...saidRow(() => say.draft, "letterSmall", 13), keys: { item: "state" } },
  ];
  const points = rows.reduce((sum, { height = 15 }) => sum + height, 0);
  return documentPlan({
    mark: marks.bid,
    name,
    rows,
    tall: points <= ONE_PAGE ? 1 : 2,
    footer: name,
    used: builtFrom(sources),
  });
}

const countsOn = (sources: BidData["sources"]): Row[] => {
  const arenas = sources.filter(({ made }) => isArena(made.pen)).length;
  const built = arenas === 0 ? say.thePen : arenas === sources.length ? say.theArena : say.theBoth;
  return [headingRow(say.countsOn), ...bidCountsOn(built).map((entry) => paragraphRow(entry))];
};

const signer = (answers: BidData["answers"]) =>
  String(answers[businessEntries[0].key] ?? "") || say.contractorSigns;
