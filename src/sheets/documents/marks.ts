import { type Shown } from "../keyed-cells";

/** What A1 of each document over estimates says, by which it is found whatever its name. */
export const marks = {
  bid: "penstake bid 1",
  issued: "penstake issued bid 1",
  together: "penstake together 1",
  "change order": "penstake change order 1",
  invoice: "penstake invoice 1",
  "price request": "penstake price request 1",
  "purchase order": "penstake purchase order 1",
  tickets: "penstake tickets 1",
  "close-out": "penstake close-out 1",
  compare: "penstake compare 1",
} as const;

/** A kind of document over estimates. */
export type Kind = keyof typeof marks;

/** True for the sheet of a document of this kind. */
export const isOfKind = ({ values }: Shown, kind: Kind) => values[0]?.[0] === marks[kind];
