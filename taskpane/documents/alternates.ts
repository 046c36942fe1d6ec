import { pricedAlternates, type Alternate } from "../../src/estimate/alternates";
import { fieldOf, type FieldValue } from "../../src/estimate/fields";
import { HostError } from "../../src/hosts/host";
import { type Alternate as BidAlternate } from "../../src/sheets/documents/bid-price";
import { type EstimateSource } from "../../src/sheets/documents/source";
import { type Book } from "./book";

const say = {
  deeper: (now: number, then: number) => `Footing ${then} in deep instead of ${now} in`,
  deeperBase: (now: number, then: number) =>
    now > 0 ? `Base ${then} in deep instead of ${now} in` : `A compacted base, ${then} in deep`,
  wider: (now: number, then: number) => `A ${then} ft gate instead of ${now} ft`,
  beside: (structure: string, called: string) => `The ${structure} "${called}" built with it`,
  none: (name: string, why: string) => `${name}: ${why}`,
};

/** What a bid can offer beside what it says: deeper sand, a base or a deeper one, a wider first gate, and each of the other estimates with it. */
export function offered(source: EstimateSource, others: readonly EstimateSource[]): Alternate[] {
  const { job } = source;
  const more = (key: string, by: number, words: (now: number, then: number) => string): Alternate[] => {
    const now = job[key];
    if (!(key in source.sheet.cells) || typeof now !== "number" || now + by > fieldOf(key).range![1])
      return [];
    return [
      { name: words(now, now + by), answers: { [key]: now + by } satisfies Record<string, FieldValue> },
    ];
  };
  return [
    ...more("depth", 1, say.deeper),
    ...more("base_depth", Number(job.base_depth) > 0 ? 2 : 4, say.deeperBase),
    ...["gate_1", "leaf_1"].flatMap((key) => more(key, 2, say.wider)),
    ...others.map(({ name, job: beside, sheet }) => ({
      name: say.beside(sheet.structure, String(beside.job_name ?? name)),
      beside: { job: beside, own: sheet.own },
    })),
  ];
}

/** The chosen ones with what each adds to the price, or takes from it. Refuses one without a price, and says why. */
export function pricedFor({ prices }: Book, { job, sheet }: EstimateSource, chosen: Alternate[]): BidAlternate[] {
  return pricedAlternates({ job, own: sheet.own }, chosen, prices).map(({ name, difference, refusal }) => {
    if (difference === null) throw new HostError(say.none(name, refusal ?? ""));
    return { words: name, difference };
  });
} // prettier-ignore
