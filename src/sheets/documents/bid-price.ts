import { call, minus, number, over, times, type Expression } from "../expression";
import { put } from "../estimate-cells";
import { blankUnless, isNumber } from "../formula-terms";
import { bidExtras } from "./bid-entries";
import { type BidData } from "./bid";
import { entry } from "./entries";
import { messages } from "./messages";
import { across, columns, entryCell, gap, headingRow, moneyRow, type At, type Row } from "./rows";

/** Something else that could be built, and what it changes in the price, $. */
export interface Alternate {
  words: string;
  difference: number;
}

/** A part of the price and when it is due. */
export interface DrawShare {
  words: string;
  /** Whole percents of the price. */
  percent: number;
}

const say = messages.bid;

/** The price, the alternates, the draws and the unit prices for extras. */
export const priceRows = (data: BidData): Row[] => [
  gap(4),
  moneyRow(say.price, () => data.price, { key: "price", total: true }),
  ...alternateRows(data.alternates),
  ...drawRows(data.draws),
  ...extraRows(data.answers),
];

function alternateRows(alternates: BidData["alternates"]): Row[] {
  if (alternates.length === 0) return [];
  return [
    headingRow(say.alternates),
    ...alternates.map(({ words, difference }, k): Row => ({
      keys: { amount: `alternate_${k + 1}`, item: `alternate_${k + 1}_words` },
      height: 15,
      cells: (row) => [
        { ...put(row, columns.item, words, "letterWords"), across: across - 1 },
        put(row, columns.amount, difference, "letterChange"),
      ],
    })),
  ];
}

/** The share of a draw, in whole percents, which the user may change; the last draw is what is left. */
const shareEntry = (k: number) =>
  entry(`Draw ${k}, %`, `Pago ${k}, %`, {
    key: `draw_${k}_share`,
    kind: "number",
    unit: "%",
    range: [0, 100],
  });

function drawRows(draws: BidData["draws"]): Row[] {
  if (draws.length === 0) return [];
  const amountOf = (at: At, k: number): Expression => {
    const before = draws.slice(0, k).map((_, n) => at(`draw_${n + 1}`));
    const rest = before.length > 0 ? minus(at("price"), ...before) : at("price");
    const share = () => over(times(at("price"), number(at(shareEntry(k + 1).key))), 100);
    return blankUnless(isNumber(at("price")), call("ROUND", k + 1 < draws.length ? share() : rest, 2));
  };
  return [
    headingRow(say.draws),
    ...draws.map(({ words, percent }, k): Row => {
      const last = k + 1 === draws.length;
      const share = shareEntry(k + 1);
      return {
        keys: { item: `draw_${k + 1}_words`, amount: `draw_${k + 1}`, ...(last ? {} : { price: share.key }) },
        height: 15,
        cells: (row, at) => [
          { ...put(row, columns.item, words, "letterWords"), across: 3 },
          put(row, columns.unit, "", "letterWords"),
          last
            ? put(row, columns.price, say.rest, "letterRight")
            : { ...entryCell(row, columns.price, share, percent), style: "letterOwnPercent" },
          put(row, columns.amount, amountOf(at, k), "letterMoney"),
        ],
      };
    }),
  ];
}

function extraRows(answers: BidData["answers"]): Row[] {
  const given = bidExtras.filter(({ key }) => typeof answers[key] === "number");
  if (given.length === 0) return [];
  return [
    headingRow(say.extras),
    ...given.map(({ per, ...extra }): Row => ({
      keys: { amount: extra.key },
      height: 15,
      cells: (row) => [
        { ...put(row, columns.item, extra.label.en, "letterWords"), across: 4 },
        put(row, columns.price, per, "letterRight"),
        entryCell(row, columns.amount, extra, answers[extra.key]),
      ],
    })),
  ];
}
