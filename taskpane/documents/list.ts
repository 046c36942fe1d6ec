import { type TemplateResult } from "lit/html.js";
import { type Context } from "../views/context";
import { type Desk } from "./desk";

/** What a document's part of the panel shows once its script is there: what it asks, and the button that writes it. */
export interface DocumentBody {
  view(context: Context, desk: Desk): TemplateResult;
}

/** A document that the panel can write over the ticked estimates. */
export interface DocumentEntry {
  /** Names its part of the page; no other may bear it. */
  id: string;
  title: string;
  hint: string;
  load: () => Promise<DocumentBody>;
}

/** The documents, in the order in which a job needs them. */
export const documents: readonly DocumentEntry[] = [
  {
    id: "compare",
    title: "Compare sizes",
    hint: "Side by side, against the budget",
    load: async () => (await import("./compare")).compareBody(),
  },
  {
    id: "bid",
    title: "Bid",
    hint: "For the customer to sign; issue it to freeze it",
    load: async () => (await import("./bid")).bidBody(),
  },
  {
    id: "change-order",
    title: "Change order",
    hint: "To an issued bid: what, why, plus or minus",
    load: async () => (await import("./change-order")).changeOrderBody(),
  },
  {
    id: "invoice",
    title: "Invoice",
    hint: "Draws and signed changes, less paid and held back",
    load: async () => (await import("./invoice")).invoiceBody(),
  },
  {
    id: "price-request",
    title: "Price request",
    hint: "What a supplier fills in, without a price",
    load: async () => (await import("./price-request")).priceRequestBody(),
  },
  {
    id: "purchase-order",
    title: "Purchase order",
    hint: "From a filled-in price request",
    load: async () => (await import("./purchase-order")).purchaseOrderBody(),
  },
  {
    id: "close-out",
    title: "Tickets and close-out",
    hint: "What came, what it cost, what to bill",
    load: async () => (await import("./close-out")).closeOutBody(),
  },
];
