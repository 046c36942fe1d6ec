import { messages } from "./messages";
import { notAllowed } from "./refusal";

/** A number without sign as people write it: 12, 12.5, 12,5 or .5. */
export const DECIMAL = String.raw`(?:\d+(?:[.,]\d*)?|[.,]\d+)`;

/**
 * The value of a text that DECIMAL fits. A comma is a decimal comma; before exactly three digits it may as well part
 * thousands and is refused.
 */
export function decimal(text: string): number {
  if (/,\d{3}$/.test(text)) throw notAllowed(messages.ambiguousComma(text));
  return Number(text.replace(",", "."));
}

const NUMBER = new RegExp(String.raw`^([+-]?)\s*(${DECIMAL})\s*(%?)$`);

/** A text that is one number, with or without a percent sign (10 % is 10). Refuses any other. */
export function readNumber(text: string): number {
  const found = NUMBER.exec(text.trim().replace("\u2212", "-"));
  if (!found) throw notAllowed(messages.unreadable(text, messages.numberExamples));
  return (found[1] === "-" ? -1 : 1) * decimal(found[2]) + 0;
}

/** A bearing or an angle as a crew reads it, to a tenth of a degree: 180° or 7.5°. */
export const degrees = (angle: number) => `${Math.round(angle * 10) / 10}°`;
