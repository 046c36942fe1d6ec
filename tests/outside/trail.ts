import { type Estimate } from "../../src/estimate/estimate";
import { contentOfPlans } from "../../src/sheets/calculate";
import { type BidData } from "../../src/sheets/documents/bid";
import { type EstimateSource } from "../../src/sheets/documents/source";
import { type SheetPlan } from "../../src/sheets/plan";
import { type SheetData } from "../../src/sheets/workbook-content";
import { pen } from "../sheets/documents/books";

/** A document to hold: what its keyed cells must show, by src, and what some of its rows must show in these columns. */
export interface Held {
  name: string;
  figures: Record<string, number>;
  rows?: { from: number; columns: readonly number[]; values: number[][] };
}

/** Every document of one price, as sheets worked out, and what they must show. */
export interface Trail {
  sheets: SheetData[];
  held: Held[];
}

/** What a trail is made of: its estimates as src makes them, the cell and the figure of the price, and a number for its sheets. */
export interface Priced {
  sources: EstimateSource[];
  made: Estimate[];
  price: BidData["price"];
  total: number;
  /** The sheets that its documents look at. */
  beside: SheetData[];
  k: number;
}

/** Sheets worked out beside others, which they look at. */
export const work = (plans: SheetPlan[], beside: SheetData[]) =>
  contentOfPlans(plans, pen, { sheets: beside }).sheets;
