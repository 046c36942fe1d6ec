/** What the documents over estimates can say to a user, beside the words of each in its own file. */
export const messages = {
  outOfDate: "OUT OF DATE: the estimate has moved on since this was written. Write it again.",
  used: {
    inputs: { en: "Written from", es: "Escrito con" },
    used: { en: "Then", es: "Entonces" },
    now: { en: "Now", es: "Ahora" },
    changed: { en: "changed", es: "cambió" },
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
