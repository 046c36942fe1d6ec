/** The day that a spreadsheet counts as 0, in days before 1970-01-01. */
const DAYS_TO_1970 = 25569;
const MILLISECONDS_A_DAY = 86_400_000;

/** Day numbers of a sheet that are taken for dates: 1970 to 2199. */
const [FIRST_DAY, LAST_DAY] = [DAYS_TO_1970, 109_938];

/** A calendar day as a spreadsheet's day number; undefined where the calendar has no such day. Months count from 1. */
export function dayNumber(year: number, month: number, day: number): number | undefined {
  const date = new Date(Date.UTC(year, month - 1, day));
  const exists = date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return exists ? Math.round(date.getTime() / MILLISECONDS_A_DAY) + DAYS_TO_1970 : undefined;
}

/** The day of a moment where the user is, as a spreadsheet's day number. */
export const dayOf = (date: Date): number =>
  dayNumber(date.getFullYear(), date.getMonth() + 1, date.getDate())!;

/** A spreadsheet's day number as year, month and day: 2026-04-09. */
export const dayAsText = (day: number): string =>
  new Date((Math.floor(day) - DAYS_TO_1970) * MILLISECONDS_A_DAY).toISOString().slice(0, 10);

/** The first three letters of the months, in English and in Spanish. */
const MONTHS = [
  "jan ene",
  "feb",
  "mar",
  "apr abr",
  "may",
  "jun",
  "jul",
  "aug ago",
  "sep set",
  "oct",
  "nov",
  "dec dic",
];

const monthNamed = (word: string) => MONTHS.findIndex((names) => names.includes(word.slice(0, 3))) + 1;

const fullYear = (year: string) => (year.length === 2 ? 2000 + Number(year) : Number(year));

/**
 * The day that a person or a sheet wrote, as a spreadsheet's day number: such a number, 2026-04-09, 4/9/2026 (month
 * first; day first where the first is over 12), 9.4.2026 (day first), Apr 9, 2026 or 9 de abril de 2026. Two digits of a
 * year are of this century. Undefined where it is none of these, or before 1970 or after 2199.
 */
export function readDay(written: unknown): number | undefined {
  const day = typeof written === "number" ? Math.floor(written) : fromText(String(written ?? ""));
  return day !== undefined && day >= FIRST_DAY && day <= LAST_DAY ? day : undefined;
}

function fromText(text: string): number | undefined {
  const plain = text.trim().toLowerCase().replace(/\s+/g, " ");
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[t ]\d.*)?$/.exec(plain);
  if (iso) return dayNumber(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const digits = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})$/.exec(plain);
  if (digits) {
    const [one, other, year] = [Number(digits[1]), Number(digits[3]), fullYear(digits[4])];
    return digits[2] === "." || one > 12 ? dayNumber(year, other, one) : dayNumber(year, one, other);
  }
  const monthFirst = /^([a-z]{3,10})\.? (\d{1,2})(?:st|nd|rd|th)?,? (\d{4}|\d{2})$/.exec(plain);
  if (monthFirst) return named(monthFirst[3], monthFirst[1], monthFirst[2]);
  const dayFirst = /^(\d{1,2})[ -](?:de )?([a-z]{3,10})\.?,?[ -](?:de )?(\d{4}|\d{2})$/.exec(plain);
  return dayFirst ? named(dayFirst[3], dayFirst[2], dayFirst[1]) : undefined;
}

function named(year: string, month: string, day: string): number | undefined {
  const number = monthNamed(month);
  return number > 0 ? dayNumber(fullYear(year), number, Number(day)) : undefined;
}
