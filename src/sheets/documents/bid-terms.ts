import { bidWork } from "./bid-entries";
import { type BidData } from "./bid";
import { messages } from "./messages";
import { entryRow, headingRow, type Row } from "./rows";

/** When the work is done, and who pulls permits; what was not answered is left out. */
export const workRows = ({ answers }: Pick<BidData, "answers">): Row[] => [
  headingRow(messages.bid.terms),
  ...Object.values(bidWork)
    .filter(({ key }) => (answers[key] ?? null) !== null)
    .map((entry) => entryRow(entry, answers[entry.key])),
];
