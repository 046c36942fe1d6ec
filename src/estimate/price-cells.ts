import { readLength } from "../units/length";
import { Refusal } from "../units/refusal";
import { plainWords } from "./price-words";

/**
 * The amount of money that a cell of a table says: 1234.5, $1,234.50, 1.234,50 or 12,5. Undefined where it is none, is
 * negative or over a million.
 */
export function readAmount(written: unknown): number | undefined {
  if (typeof written === "number") return inRange(written);
  const plain = String(written ?? "").replace(/^\s*(?:us)?\s*\$?\s*|\s*(?:usd)?\s*$/gi, "");
  if (/^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(plain)) return inRange(Number(plain.replaceAll(",", "")));
  if (/^\d{1,3}(?:\.\d{3})+,\d{1,2}$/.test(plain))
    return inRange(Number(plain.replaceAll(".", "").replace(",", ".")));
  if (/^\d+(?:[.,]\d{1,2})?$|^\d*\.\d+$/.test(plain)) return inRange(Number(plain.replace(",", ".")));
  return undefined;
}

const inRange = (amount: number) =>
  Number.isFinite(amount) && amount >= 0 && amount <= 1_000_000 ? amount : undefined;

/** A yes or a no of a table; undefined where it is neither. */
export function readYesOrNo(written: unknown): boolean | undefined {
  const word = plainWords(String(written ?? ""));
  if (["yes", "y", "x", "true", "si", "taxed", "taxable"].includes(word)) return true;
  return ["no", "n", "false", "exempt", "exento"].includes(word) ? false : undefined;
}

/** A size in the unit of its kind: a length in any notation, or a number before cu yd or lb. Undefined where it is none. */
export function readSize(written: unknown, unit: string): number | undefined {
  const size = typeof written === "number" ? written : fromText(String(written ?? ""), unit);
  return size !== undefined && size > 0 && size <= 1000 ? Number(size.toPrecision(12)) : undefined;
}

function fromText(text: string, unit: string): number | undefined {
  if (unit !== "ft") {
    const found = /^(\d+(?:\.\d+)?)[ -]?(?:cu\.? ?yds?|cubic yards?|cy|yd|yards?|lbs?\.?|pounds?)?\.?$/i.exec(
      text.trim(),
    );
    return found ? Number(found[1]) : undefined;
  }
  try {
    return readLength(text, "ft");
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}
