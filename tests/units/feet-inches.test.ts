import { inchesAlone } from "../../src/units/feet-inches";

test("inches alone stay inches however long they are", () => {
  expect([2.9, 14.5, 0, 12].map((inches) => inchesAlone(inches, 8, "words"))).toEqual([
    "2 7/8 in",
    "14 1/2 in",
    "0 in",
    "12 in",
  ]);
});
