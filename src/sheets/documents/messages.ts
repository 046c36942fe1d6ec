/** What the documents over estimates can say to a user, beside the words of each in its own file. */
export const messages = {
  outOfDate: "OUT OF DATE: the estimate has moved on since this was written. Write it again.",
  used: {
    inputs: { en: "Written from", es: "Escrito con" },
    used: { en: "Then", es: "Entonces" },
    now: { en: "Now", es: "Ahora" },
    changed: { en: "changed", es: "cambió" },
  },
  bid: {
    title: "Bid",
    for: "For",
    site: "Site",
    job: "Job",
    built: "What we build",
    builtOf: (place: number, job: string) => `What we build (${place}): ${job}`,
    sand: "Footing sand",
    price: "Price for all of the above",
    alternates: "If you would rather: price plus or minus",
    draws: "Payments",
    rest: "the rest",
    deposit: "Deposit on signing",
    drawsTooMuch:
      "The deposit and what follows come to more than the price: together they may be 100 % at most.",
    moved: (sheet: string) => `"${sheet}" is out of date. Write the bid again before you issue it.`,
    noNumber: (sheet: string) => `"${sheet}" has no number. Type one at its top right first.`,
    broken: (sheet: string, error: string) => `"${sheet}" shows ${error}. Mend that before you issue it.`,
    extras: "Unit prices for extras",
    countsOn: "The price counts on",
    terms: "Terms",
    contractorSigns: "Contractor",
    customerSigns: "Customer",
    day: "Date",
    example: "EXAMPLE: ON EXAMPLE PRICES, NO OFFER",
    draft: "Draft: it follows the estimate until it is issued.",
    issued: (number: string, day: string) =>
      `Bid ${number}, issued ${day}. Nothing in it moves any more; what changes later is a change order.`,
    onExamples: (lines: number) =>
      `${lines === 1 ? "1 line stands" : `${lines} lines stand`} on example prices. Type your own prices first, or tick that the bid is an example.`,
  },
  lacks: (sheet: string, what: string) =>
    `"${sheet}" has no cell for ${what}. Put its keys back, or write the estimate again.`,
  notPriced: (sheet: string, total: string) => `"${sheet}": ${total || "no total yet"}. Mend that first.`,
  isPlain: (sheet: string) =>
    `"${sheet}" is a plain copy, whose figures do not follow. Make it live again first.`,
  isOutOfDate: (sheet: string) => `"${sheet}" is out of date. Update it from the panel first.`,
  badInput: (sheet: string, label: string, why: string) => `"${sheet}", ${label}: ${why}`,
  noAnswer: (sheet: string, why: string) => `"${sheet}": ${why}`,
};
