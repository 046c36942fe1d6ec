import { type FieldValue } from "../../estimate/fields";
import { notAllowed } from "../../units/refusal";
import { bidDraws } from "./bid-entries";
import { type DrawShare } from "./bid-price";
import { messages } from "./messages";

/** The draws that the answers lead to; one of nothing is left out. Refuses shares that come to more than the price. */
export function drawsOf(answers: Readonly<Record<string, FieldValue>>): DrawShare[] {
  const { deposit, milestone, share, last } = bidDraws;
  const percent = (key: string) => Number(answers[key] ?? 0);
  const words = (entry: (typeof bidDraws)["last"]) => String(answers[entry.key] ?? entry.default);
  const before = [
    { words: messages.bid.deposit, percent: percent(deposit.key) },
    { words: words(milestone), percent: percent(share.key) },
  ].filter((draw) => draw.percent > 0);
  const asked = before.reduce((sum, draw) => sum + draw.percent, 0);
  if (asked > 100) throw notAllowed(messages.bid.drawsTooMuch);
  return [...before, { words: words(last), percent: 100 - asked }];
}
