/** A day as year, month and day, so that days sort as they follow: 2026-04-09. */
export function dayText(date: Date): string {
  const parts = [date.getFullYear(), date.getMonth() + 1, date.getDate()];
  return parts.map((part) => String(part).padStart(2, "0")).join("-");
}
