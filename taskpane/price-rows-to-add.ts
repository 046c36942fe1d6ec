export { missingPrices, rowsToAdd } from "../src/estimate/missing-prices";
export { appendedRow } from "../src/sheets/price-rows";
