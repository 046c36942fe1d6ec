import { bidWork } from "./bid-entries";
import { type BidData } from "./bid";
import { answered } from "./entries";
import { messages } from "./messages";
import { entryRow, headingRow, type Row } from "./rows";

/** When the work is done, and who pulls permits; what was not answered is left out. */
export const workRows = ({ answers }: Pick<BidData, "answers">): Row[] => [
  headingRow(messages.bid.terms),
  ...answered(Object.values(bidWork), answers).map((entry) => entryRow(entry, answers[entry.key])),
];
