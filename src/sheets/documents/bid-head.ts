import { planDrawing } from "../../drawing/plan";
import { byOtherOf } from "../../estimate/by-other";
import { comes } from "../../estimate/layers";
import { penSentence } from "../../estimate/sentences";
import { type PlanPicture } from "../plan";
import { bidHead, scopeEntry } from "./bid-entries";
import { layerOf, scopeOf, sizesOf } from "./bid-scope";
import { type BidData } from "./bid";
import { messages } from "./messages";
import { businessRows, pairRow, sourceRow } from "./letter-head";
import { columns, factRow, gap, headingRow, LINE, numberedRow, paragraphRow, type Row } from "./rows";
import { type EstimateSource } from "./source";

const say = messages.bid;

/** Who bids, the bid's number and date, and for whom and where it is. */
export function bidHeadRows(sources: BidData["sources"], answers: BidData["answers"]): Row[] {
  const { number, date, valid } = bidHead;
  const [first] = sources;
  return [
    numberedRow(say.title, number, answers[number.key] ?? null),
    ...businessRows(answers),
    gap(6),
    pairRow(sourceRow("bid_for", say.for, first, "customer", { across: 3 }), date, answers),
    pairRow(sourceRow("bid_site", say.site, first, "site", { across: 3 }), valid, answers),
    sourceRow("bid_job", say.job, first, "job_name"),
  ];
}

/** What is built, estimate by estimate: in words, its sizes, its base and its sand, with its plan beside them. */
export const scopeRows = ({ sources, shares }: BidData): Row[] =>
  sources.flatMap((source, k) => {
    const title = sources.length > 1 ? say.builtOf(k + 1, String(source.job.job_name ?? source.name)) : say.built;
    const rows: Row[] = [
      ...scopeOf(source).map((words, p) =>
        paragraphRow(scopeEntry(k + 1, p + 1), words, { across: 3 })),
      ...sizesOf(source).map(({ label, says }) => factRow(label, () => says, { across: 3 })),
      ...(comes(source.made.base) ? [factRow(say.base, () => layerOf(source, "base", shares?.base), { across: 3 })] : []),
      factRow(say.sand, () => layerOf(source, "sand", shares?.sand), { across: 3, style: "letterWords", height: 2 + 2 * LINE }),
    ];
    return [headingRow(title), gap(3), ...besidePlan(rows, planOf(source))];
  }); // prettier-ignore

/** How wide the plan is drawn, pixels, and how wide it stands beside the words, points. */
const drawn = 300;
const PLAN = 168;

function planOf({ job, made: { pen } }: EstimateSource): Omit<PlanPicture, "row"> {
  const svg = planDrawing(pen, { width: drawn, byOther: byOtherOf(job, pen) });
  const height = Number(/height="(\d+)"/.exec(svg)?.[1] ?? drawn);
  return {
    column: columns.unit,
    width: PLAN,
    height: Math.round((PLAN * height) / drawn),
    svg,
    description: penSentence(pen),
  };
}

/** Rows with a picture beside them, and as many empty ones below as it needs. */
function besidePlan(rows: Row[], plan: Omit<PlanPicture, "row">): Row[] {
  const tall = rows.reduce((sum, { height = 15 }) => sum + height, 0);
  const left = Math.ceil(Math.max(0, plan.height + 4 - tall) / LINE);
  const [first, ...others] = rows;
  return [{ ...first, picture: plan }, ...others, ...Array.from({ length: left }, () => gap(LINE))];
}
