/** What this room can say to a user. Whoever asked puts the name of the field or argument in front. */
export const messages = {
  unreadable: (text: string, examples: string) => `cannot read "${text}": write ${examples}`,
  lengthExamples: `30' 4 1/2", 30 ft 4 in, 30.375, 9.25 m or 450 mm`,
  numberExamples: "a number such as 12 or 12.5",
  inchesOverFoot: (text: string, same: string) =>
    `inches beside feet must be under 12: for ${text} write ${same}, if that is what you mean`,
  listExamples: "numbers with a semicolon between, such as 80; -12.5",
  ambiguousComma: (text: string) =>
    `the comma in "${text}" may part thousands or decimals: write 1500, or 1.5 with a point`,
  looksLikeDate: (allowed: string) => `this looks like a date: write 12' 6" (${allowed})`,
  outside: (allowed: string) => `must be ${allowed}`,
  range: (least: string, most: string, kind: "over" | "whole" | "from") =>
    `${{ over: "over ", whole: "a whole number from ", from: "from " }[kind]}${least} to ${most}`,
};
