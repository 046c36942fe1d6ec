import { type Chord } from "../geometry/cyclic-polygon";
import { EPSILON } from "../units/rounding";
import { type PanelClass, TooManyMixes, countsOf, panelClasses, ranking } from "./mix-classes";
import { addExtremeInSteps } from "./extreme-mixes";
import { addCheapest, addNearestOfHalves } from "./half-mixes";
import { addNearestOnLattice } from "./lattice-mixes";
import { type Given, type Mix, type Search, type Side } from "./mix-search";
import { addNearestInSteps } from "./stepped-mixes";
import { type Measure, ROUND_ENOUGH, aroundYardstick, circleYardstick } from "./yardstick";

/** What adds the nearest mixes without holding all of them, each where it can. */
const quickWays = [addNearestInSteps, addExtremeInSteps, addNearestOnLattice];

/** More panels of one length than this are no fence; they would only fill the memory. */
const MOST_PANELS = 100_000;

/** A panel length of a list: pin to pin with the pin gap, over 0; how many there are; what one costs. */
export interface Stocked {
  chord: number;
  stock: number;
  price: number;
}

/** What is asked of the pen of a mix. */
export interface Question {
  measure: Measure;
  side: Side;
  /** The size wanted, ft. */
  wanted: number;
  /** The cheapest within this, ft. Left out: the nearest, whatever it costs. */
  tolerance?: number;
}

/**
 * Finds mixes of these panels with these gates (pin to pin with the pin gap), for sizes up to `largest`: the best
 * `many` for a question, the best first, fewer where there are no more. Of the cheapest within a tolerance it finds one.
 */
export function mixFinder(panels: readonly Stocked[], gates: readonly number[], largest: number, many = 1) {
  const longestGate = Math.max(0, ...gates);
  const longest = Math.max(longestGate, ...panels.map(({ chord, stock }) => (stock > 0 ? chord : 0)));
  // No answer is farther around than this: with a panel less it would still be a pen, large enough, and nearer. For
  // the next best there are as many such pens, each with one panel less than the one before.
  const farthest = 1.5 * Math.PI * Math.hypot(largest, longest) + (many - 1) * longest;
  const dearest = Math.max(...panels.map(({ price }) => price)) || 1;
  const listed = panels.map(({ chord, stock, price }) => ({
    chord,
    price: price / dearest,
    most: Math.min(stock, Math.floor(farthest / chord)),
  }));
  const ranks = ranking(listed);
  if (listed.some(({ most }) => most > MOST_PANELS)) throw new TooManyMixes();
  const priced = panelClasses(listed, ranks);
  const unpriced = panelClasses(
    listed.map((panel) => ({ ...panel, price: 0 })),
    ranks,
  );
  const chords: Chord[] = [...listed.map(({ chord }) => ({ length: chord, count: 0 })), ...gates.map(single)];

  /** Adds to the best mixes of a question. */
  function search(
    question: Question,
    best: Mix[],
    parts: Pick<Search, "classes" | "yardstick" | "limit"> & Partial<Pick<Search, "keep" | "surelyPens">>,
    longestPanel?: PanelClass,
  ): void {
    const { yardstick } = parts;
    const given: Given = { weight: 0, cost: 0, count: 0, rank: 0 };
    for (const gate of gates) given.weight += yardstick.weigh(gate);
    if (longestPanel) {
      given.weight += yardstick.weigh(longestPanel.chord);
      given.cost = longestPanel.price;
      given.count = 1;
      given.rank = longestPanel.ranks[0];
    }
    const sizeOf = (rank: number) => {
      countsOf(rank, ranks).forEach((count, i) => (chords[i].count = count));
      return yardstick.size(chords);
    };
    const whole: Search = {
      keep: Infinity,
      surelyPens: true,
      ...question,
      ...parts,
      given,
      sizeOf,
      best,
      many,
    };
    if (question.tolerance !== undefined) addCheapest(whole, question.tolerance);
    else if (!quickWays.some((add) => add(whole))) addNearestOfHalves(whole);
  }

  /** By distance around. Thinning is sound where every mix that could be better is round enough to be a pen. */
  function around(question: Question, classes: PanelClass[]): Mix[] {
    const { wanted, tolerance } = question;
    const round = (ROUND_ENOUGH * longest) / Math.PI;
    const limit = Math.max(Math.PI * wanted, Math.PI * longest) + many * longest + EPSILON;
    if (wanted - (tolerance ?? 0) >= round) {
      const mixes: Mix[] = [];
      search(question, mixes, { classes, yardstick: aroundYardstick, limit, keep: many });
      const last = mixes.at(-1);
      if (mixes.length === many && last && wanted - Math.abs(last.size - wanted) >= round) return mixes;
      if (!last && tolerance !== undefined) return [];
    }
    const mixes: Mix[] = [];
    search(question, mixes, { classes, yardstick: aroundYardstick, limit, surelyPens: false });
    return mixes;
  }

  /** By pin circle, from below: nothing in it is longer than the circle is wide. */
  function pin(question: Question, classes: PanelClass[]): Mix[] {
    if (longestGate > question.wanted + EPSILON) return [];
    const fitting = classes.filter(({ chord }) => chord <= question.wanted + EPSILON);
    const yardstick = circleYardstick(question.wanted, [...fitting.map(({ chord }) => chord), ...gates]);
    const mixes: Mix[] = [];
    search(question, mixes, { classes: fitting, yardstick, limit: 2 * Math.PI + EPSILON });
    return mixes;
  }

  /** By inside clear: one search for each length that may be the longest. */
  function inside(question: Question, classes: PanelClass[]): Mix[] {
    const best: Mix[] = [];
    const longestFirst = (first: PanelClass | null) => {
      const most = first ? first.chord : longestGate;
      const others = classes.filter(({ chord }) => chord <= most + EPSILON);
      const yardstick = circleYardstick(
        question.wanted,
        [...others.map(({ chord }) => chord), ...gates],
        most,
      );
      const heaviest = question.side === "below" ? 0 : yardstick.weigh(most);
      const limit = 2 * Math.PI + many * heaviest + EPSILON;
      const rest = others
        .map((c) => (c === first ? { ...c, ranks: c.ranks.slice(1) } : c))
        .filter((c) => c.ranks.length > 0);
      search(question, best, { classes: rest, yardstick, limit }, first ?? undefined);
    };
    if (gates.length > 0) longestFirst(null);
    for (const panels of classes) if (panels.chord > longestGate + EPSILON) longestFirst(panels);
    return best;
  }

  const by = { around, pin, inside };
  return {
    find: (question: Question): Mix[] =>
      by[question.measure](question, question.tolerance === undefined ? unpriced : priced),
    counts: (mix: Mix): number[] => countsOf(mix.rank, ranks),
  };
}

const single = (length: number): Chord => ({ length, count: 1 });
