import { fastenerItems } from "../estimate/price-kinds";
import { type Fastener } from "../fence/fasteners";
import { expression, text, when, type Expression, type Term } from "./expression";
import { blankUnless, cellsOf, type Sheet } from "./formula-terms";
import { messages } from "./messages";
import { chosen, hasKick, isDriven } from "./post-terms";

/** What a line of posts, rails or holes is called, and what it looks for in the prices. */
interface PostItem {
  says: Expression;
  unit: Expression;
  item: Term;
  size?: Term;
  whole: boolean;
}

/** The lines whose item hangs on a choice or on a figure, by key. */
export function postItems(sheet: Sheet): Record<string, PostItem> {
  const { at, orDefault } = cellsOf(sheet);
  const of = (says: Term, unit: string, item: Term, size?: Term, whole = true): PostItem =>
    ({ says: expression(says), unit: expression(unit), item, size, whole });
  const word = (key: string) => chosen(sheet, key, (option) => option);
  const sized = (words: string, kind: string, key: string, size: string) =>
    of(text(words, word(key), ", ", at(size), " ft"), "each", text(kind, word(key)), at(size));
  const driven = isDriven(sheet);
  const kick = sized(messages.kickItem, "kick ", "kick_board", "kick_stock_length");
  return {
    line_posts: sized(messages.linePostItem, "post ", "line_post", "post_bought"),
    gate_posts: sized(messages.gatePostItem, "post ", "gate_post", "post_bought"),
    rails: sized(messages.railItem, "rail ", "rail_stock", "rail_stock_length"),
    kick: { ...kick, says: blankUnless(hasKick(sheet), kick.says) },
    fasteners: of(
      chosen(sheet, "fastener", (kind) => messages.fastenersItem[kind as Fastener]),
      "each",
      chosen(sheet, "fastener", (kind) => fastenerItems[kind as Fastener]),
    ),
    holes: of(when(driven, messages.drivenItem, messages.holesItem), "each", when(driven, "drive", "hole")),
    bags: of(text(messages.bagsItem, orDefault("bag_size"), " lb"), "bag", "bag", orDefault("bag_size")),
    stone: of(messages.stoneItem, "cu yd", "stone", undefined, false),
  };
} // prettier-ignore
