import { examplePrices, type PriceRow } from "../../src/estimate/prices";
import { HostError, type SheetContent, type WorkbookHost } from "../../src/hosts/host";
import { isOfKind, type Kind } from "../../src/sheets/documents/marks";
import { estimateSource, type EstimateSource } from "../../src/sheets/documents/source";
import { isEstimate } from "../../src/sheets/keyed";
import { pricesName } from "../../src/sheets/prices-layout";
import { readPrices } from "../../src/sheets/price-rows";
import { newPricesLayout, pricesLayoutOf, type PricesLayout } from "../../src/sheets/prices-layout";
import { Refusal } from "../../src/units/refusal";

/** A whole workbook as it was read, for documents over several of its sheets. */
export interface Book {
  sheetNames: string[];
  sheets: SheetContent[];
  prices: readonly PriceRow[];
  /** Where the sheet of prices holds what. */
  pricesLayout: PricesLayout;
}

/** Reads the workbook: every sheet, and the user's prices. */
export async function readBook(host: WorkbookHost): Promise<Book> {
  const { sheetNames, prices } = await host.look();
  return {
    sheetNames,
    sheets: await host.read(sheetNames),
    prices: prices ? readPrices(prices.values) : examplePrices,
    pricesLayout: prices ? pricesLayoutOf(prices.name, prices.values) : newPricesLayout(pricesName),
  };
}

/** The names of the estimates in a workbook, in its order. */
export const estimatesIn = ({ sheets }: Book) => sheets.filter(isEstimate).map(({ name }) => name);

/** The documents of a kind in a workbook, in its order. */
export const documentsIn = ({ sheets }: Book, kind: Kind) => sheets.filter((sheet) => isOfKind(sheet, kind));

/** The estimates of these names as sources of a document; what they refuse is said to the user. */
export function sourcesIn({ sheets, prices }: Book, names: readonly string[]): EstimateSource[] {
  const chosen = sheets.filter((sheet) => names.includes(sheet.name));
  return asked(() => chosen.map((sheet) => estimateSource(sheet, prices)));
}

/** What work gives; what it refuses is a sentence to the user. */
export function asked<T>(work: () => T): T {
  try {
    return work();
  } catch (refusal) {
    if (refusal instanceof Refusal) throw new HostError(refusal.message);
    throw refusal;
  }
}
