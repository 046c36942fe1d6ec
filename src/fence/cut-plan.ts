import { notAllowed } from "../units/refusal";
import { EPSILON, roundDown } from "../units/rounding";
import { messages } from "./messages";

/** Like bays in a row, boarded in so many rows. Lengths in ft. */
export interface BayRun {
  bays: number;
  /** What a piece needs for one bay, joint to joint. */
  bay: number;
  /** How much farther the pieces of the first and of the last bay go; under 0 they stop short. */
  reach: readonly [number, number];
  /** Rows of boards, those of like runs counted too. */
  rows: number;
}

/** One piece: how many bays it spans and its length, ft. */
export interface CutPiece {
  bays: number;
  length: number;
}

/** More bays than any fence has; a spacing of an inch would ask for as many. */
const MOST_BAYS = 100_000;

/** So many lengths of stock, each cut into these pieces. */
export interface StockCut {
  count: number;
  pieces: CutPiece[];
}

interface Bay {
  row: number;
  place: number;
}

/** Ends of rows that share a length of stock, and the bays of the middle that it has room for beside them. */
interface Pattern {
  firsts: number;
  lasts: number;
  room: number;
}

/**
 * The fewest lengths of stock that board a run, and what each is cut into. Pieces meet at posts only; where they span,
 * bays that lie side by side in one length stay one piece. Any bay may be a piece of its own, so that the fewest are
 * those that hold all the bays: the ends of the rows, which are longer or shorter, are shared out in every way, and the
 * middle fills what room is left. Saw cuts come out of what stock is longer than its name. Refuses stock that does not
 * reach over a bay, reaches that leave nothing of one, and over 100 000 bays.
 */
export function cutRun(run: BayRun, stock: number, spans: boolean): StockCut[] {
  const { bays, bay, reach, rows } = run;
  if (bays * rows > MOST_BAYS) throw notAllowed(messages.tooManyBays(MOST_BAYS));
  const whole = bays === 1 ? [bay + reach[0] + reach[1]] : [bay, bay + reach[0], bay + reach[1]];
  if (!whole.every((length) => length > 0)) throw notAllowed(messages.nothingOfBay);
  if (bays === 1) return cutAlike({ ...run, bay: bay + reach[0] + reach[1] }, stock, spans);
  if (reach.every((part) => Math.abs(part) <= EPSILON)) return cutAlike(run, stock, spans);
  const lengths = { first: bay + reach[0], last: bay + reach[1] };
  const most = Math.max(lengths.first, lengths.last, bays > 2 ? bay : 0);
  if (most > stock * (1 + EPSILON)) throw notAllowed(messages.stockTooShort(stock, most));
  const patterns = endPatterns(lengths, bay, stock, rows);
  const lengthOf = (place: number) => (place === 0 ? lengths.first : place === bays - 1 ? lengths.last : bay);
  const chosen = fewest(patterns, rows, rows * (bays - 2), roundDown(stock / bay));
  return grouped(shareOut(chosen, run, stock), spans, lengthOf);
}

/** The same where every bay is alike: each length holds as many as go into it, taken row after row. */
function cutAlike({ bays, bay, rows }: BayRun, stock: number, spans: boolean): StockCut[] {
  const each = roundDown(stock / bay);
  if (each < 1) throw notAllowed(messages.stockTooShort(stock, bay));
  const all = Array.from({ length: rows * bays }, (_, i) => ({ row: Math.floor(i / bays), place: i % bays }));
  const held = Array.from({ length: Math.ceil(all.length / each) }, (_, i) => all.slice(i * each, (i + 1) * each)); // prettier-ignore
  return grouped(held, spans, () => bay);
}

/** Every way in which ends fit a length of stock, those first that may hold whole rows. */
function endPatterns(
  { first, last }: { first: number; last: number },
  bay: number,
  stock: number,
  rows: number,
): Pattern[] {
  const patterns: Pattern[] = [];
  for (let firsts = 0; firsts <= rows && firsts * first <= stock * (1 + EPSILON); firsts++)
    for (let lasts = 0; lasts <= rows && firsts * first + lasts * last <= stock * (1 + EPSILON); lasts++)
      if (firsts + lasts > 0)
        patterns.push({ firsts, lasts, room: Math.max(0, roundDown((stock - firsts * first - lasts * last) / bay)) }); // prettier-ignore
  return patterns.sort((a, b) => Math.abs(a.firsts - a.lasts) - Math.abs(b.firsts - b.lasts));
}

/** Patterns chosen one after the other: the ends they hold, at most all, and the room they have beside them. */
interface Chosen extends Pattern {
  pattern?: Pattern;
  before?: Chosen;
}

/**
 * The patterns that hold all ends with the fewest lengths of stock in all, the middle's own counted. Of as few, those in
 * which most lengths hold an end, which leaves longer pieces beside it: the rows' firsts in front, so that a length
 * between holds the last of one row and the first of the next.
 */
function fewest(patterns: readonly Pattern[], rows: number, middle: number, each: number): Pattern[] {
  const all = (rows + 1) * rows + rows;
  let frontier = new Map<number, Chosen>([[0, { firsts: 0, lasts: 0, room: 0 }]]);
  let best: { total: number; chosen: Chosen } | undefined;
  for (let count = 1; count <= 2 * rows && !(best && count > best.total); count++) {
    const next = new Map<number, Chosen>();
    for (const before of frontier.values())
      for (const pattern of patterns) {
        const firsts = Math.min(rows, before.firsts + pattern.firsts);
        const lasts = Math.min(rows, before.lasts + pattern.lasts);
        const room = before.room + pattern.room;
        const key = (rows + 1) * firsts + lasts;
        if ((next.get(key)?.room ?? -1) < room) next.set(key, { firsts, lasts, room, pattern, before });
      }
    const chosen = next.get(all);
    if (chosen) {
      const total = count + Math.ceil(Math.max(0, middle - chosen.room) / Math.max(1, each));
      if (!best || total <= best.total) best = { total, chosen };
    }
    frontier = next;
  }
  const used: Pattern[] = [];
  for (let one: Chosen | undefined = best!.chosen; one?.pattern; one = one.before) used.push(one.pattern);
  return used.sort((a, b) => a.lasts - a.firsts - (b.lasts - b.firsts));
}

/** The bays that each length of stock holds: ends by their patterns, the middle beside its own row's end first. */
function shareOut(patterns: readonly Pattern[], { bays, bay, rows }: BayRun, stock: number): Bay[][] {
  const left = Array.from({ length: rows }, () => ({ from: 1, to: bays - 2 }));
  let [row, first, last] = [0, 0, 0];
  const middle = (room: number, own: number, fromEnd: boolean): Bay[] => {
    const held: Bay[] = [];
    while (held.length < room) {
      const mine = left[own];
      const isOwn = mine !== undefined && mine.from <= mine.to;
      while (!isOwn && row < rows && left[row].from > left[row].to) row++;
      if (!isOwn && row === rows) break;
      const place = isOwn && fromEnd ? mine.to-- : left[isOwn ? own : row].from++;
      held.push({ row: isOwn ? own : row, place });
    }
    return held;
  };
  const lengths = patterns.map(({ firsts, lasts, room }) => {
    const own = firsts > 0 ? first : last;
    const ends: Bay[] = [];
    for (let n = 0; n < firsts && first < rows; n++) ends.push({ row: first++, place: 0 });
    for (let n = 0; n < lasts && last < rows; n++) ends.push({ row: last++, place: bays - 1 });
    return [...ends, ...middle(room, own, firsts === 0)];
  });
  const each = roundDown(stock / bay);
  for (let rest = middle(each, rows, false); rest.length > 0; rest = middle(each, rows, false)) lengths.push(rest); // prettier-ignore
  return lengths;
}

/** The pieces of each length, bays side by side as one piece where pieces span; like lengths counted together. */
function grouped(held: readonly Bay[][], spans: boolean, lengthOf: (place: number) => number): StockCut[] {
  const cuts = new Map<string, StockCut>();
  for (const bays of held) {
    const pieces: CutPiece[] = [];
    let before: Bay | undefined;
    for (const one of [...bays].sort((a, b) => a.row - b.row || a.place - b.place)) {
      const joins = spans && before?.row === one.row && before.place === one.place - 1;
      if (!joins) pieces.push({ bays: 0, length: 0 });
      const piece = pieces[pieces.length - 1];
      piece.bays += 1;
      piece.length += lengthOf(one.place);
      before = one;
    }
    pieces.sort((a, b) => b.length - a.length);
    const key = pieces.map(({ bays: many, length }) => `${many}:${length.toFixed(9)}`).join();
    const like = cuts.get(key);
    if (like) like.count += 1;
    else cuts.set(key, { count: 1, pieces });
  }
  return [...cuts.values()];
}
