import { type BoughtItem } from "../../estimate/bought-items";
import { type FieldValue } from "../../estimate/fields";
import { put } from "../estimate-cells";
import { type SheetPlan } from "../plan";
import { type UsedInput } from "../used-inputs";
import { addressEntries, deliveryEntries, supplierEntries } from "./delivery-entries";
import { documentPlan } from "./document";
import { answered, type Entry } from "./entries";
import { marks } from "./marks";
import { purchaseWords as say } from "./purchase-words";
import {
  besidePage,
  boxRow,
  deliveryRows,
  headRow,
  LETTERS,
  purchaseWidths,
  quantityStyle,
  wide,
} from "./purchase-rows";
import { specEntries, specTerm, specWords } from "./request-specs";
import {
  columns,
  entryRow,
  gap,
  headingRow,
  LINE,
  linesOf,
  numberedRow,
  sentenceRow,
  type Row,
} from "./rows";
import { builtFrom, placeIn, type EstimateSource } from "./source"; // prettier-ignore

/** What a price request is written from: estimates, the items asked for, and its own entries by key. */
export interface Request {
  sources: readonly EstimateSource[];
  items: readonly BoughtItem[];
  entries: Readonly<Record<string, FieldValue>>;
}

/** All entries that a request over these items has, in their order. */
export const requestEntries = (items: readonly BoughtItem[]): Entry[] => [
  ...Object.values(addressEntries),
  ...specEntries(items),
  ...deliveryEntries,
  ...Object.values(supplierEntries),
];

/**
 * The sheet that asks one supplier for prices: quantities with their waste, each item's specification, boxes to fill
 * in, and what a driver has to know. It holds no price, no total and nothing of the customer.
 */
export function priceRequestPlan({ sources, items, entries }: Request, name: string): SheetPlan {
  const value = (entry: Entry) => entries[entry.key] ?? null;
  const row = (entry: Entry) => wide(entryRow(entry, value(entry)));
  const { number, ...address } = addressEntries;
  const rows: Row[] = [
    wide(numberedRow(say.request, number, value(number))),
    ...answered(Object.values(address), entries).map(row),
    gap(),
    wide(headingRow(say.items)),
    wide(sentenceRow(say.fillIn, "letterSmall")),
    headRow(["item", "words", "quantity", "unit", "price", "lead", "available"]),
    ...items.map((item, k) => itemRow(item, k, entries)),
    gap(),
    wide(headingRow(say.yours)),
    ...Object.values(supplierEntries).map(boxRow),
    ...deliveryRows(entries),
  ];
  const plan = documentPlan({
    mark: marks["price request"],
    name,
    rows: besidePage(rows, say.specs, specEntries(items), entries),
    footer: say.requestFooter,
    used: [...builtFrom(sources), ...quantities(sources, items)],
    widths: purchaseWidths,
  });
  return { ...plan, columns: [...plan.columns, { width: 3 }, { width: 30 }, { width: 38 }] };
}

/** The lines of the estimates that a request adds up, with what they said when it was written. */
const quantities = (sources: readonly EstimateSource[], items: readonly BoughtItem[]): UsedInput[] =>
  items.flatMap(({ name, from }) =>
    from.map(({ estimate, key }): UsedInput => {
      const source = sources[estimate];
      const label = `${source.name}: ${name}`;
      const now = placeIn(source, `${key}_quantity`);
      return { label: { en: label, es: label }, value: source.sheet.cells[`${key}_quantity`].value, now };
    }),
  );

function itemRow(item: BoughtItem, k: number, entries: Request["entries"]): Row {
  const keyOf = (part: string) => `line_${k + 1}_${part}`;
  const blank = (row: number, column: number, style: "fillMoney" | "fillWords") => ({
    ...put(row, column, "", style),
    says: { kind: "constant" as const, value: null },
    input: true,
  });
  return {
    keys: {
      item: keyOf("item"),
      words: keyOf("spec"),
      quantity: keyOf("quantity"),
      unit: keyOf("unit"),
      price: keyOf("price"),
      amount: keyOf("lead"),
      more: keyOf("available"),
    },
    height:
      4 + LINE * Math.max(linesOf(item.name, LETTERS.item), linesOf(specWords(item, entries), LETTERS.words)),
    cells: (row, at) => [
      put(row, columns.item, item.name, "letterWords"),
      put(row, columns.words, specTerm(item, at), "letterWords"),
      put(row, columns.quantity, item.quantity, quantityStyle(item.quantity)),
      put(row, columns.unit, item.unit, "itemUnit"),
      {
        ...blank(row, columns.price, "fillMoney"),
        accepts: { kind: "number", least: 0, most: 1_000_000, message: say.writePrice },
      },
      blank(row, columns.amount, "fillWords"),
      blank(row, columns.more, "fillWords"),
    ],
  };
}
