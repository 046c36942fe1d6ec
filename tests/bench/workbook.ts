import { newJob } from "../../src/estimate/job";
import { structures, type Structure } from "../../src/estimate/structures";
import { examplePrices } from "../../src/estimate/prices";
import { estimatePlan } from "../../src/sheets/estimate";
import { pricesPlan } from "../../src/sheets/prices";
import { pricesName } from "../../src/sheets/prices-layout";
import { type Painter } from "../../src/hosts/svg-to-png";
import { countingWorkbook } from "../hosts/excel/stand-in";
import { type Row } from "./measure";

/** What writing an estimate of each structure asks of Excel: one look, one write, one activation, through its real object model. */
export async function workbookRows(paint: Painter): Promise<Row[]> {
  const rows: Row[] = [];
  for (const structure of structures) rows.push(...(await rowsOf(structure, paint)));
  return rows;
}

async function rowsOf(structure: Structure, paint: Painter): Promise<Row[]> {
  const { host, trips, bytes, reset } = countingWorkbook({ paint });
  await host.write([pricesPlan(examplePrices)]);
  reset();
  await host.look();
  await host.write([estimatePlan({ ...newJob(), structure }, "Estimate", pricesName)]);
  return [
    { what: `round trips to write a ${structure}`, figure: trips(), unit: "trips", bar: 3 },
    { what: `sent to write a ${structure}`, figure: bytes() / 1024, unit: "KB", bar: 100 },
  ];
}
