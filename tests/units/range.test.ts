import { allowed, lengthRange, readWithin } from "../../src/units/range";
import { readNumber } from "../../src/units/number-text";

describe("A length within its range", () => {
  const feet = lengthRange("ft");
  const inches = lengthRange("in");

  test("takes numbers in its unit and texts in any", () => {
    expect(readWithin(60, feet)).toBe(60);
    expect(readWithin("126 in", feet)).toBe(10.5);
    expect(readWithin("10 ft", inches)).toBe(120);
    expect(readWithin("5000 ft", feet)).toBe(5000);
    expect(readWithin("5000 ft", inches)).toBe(60000);
  });

  test.each([5000.01, 45000, 46362])(
    "takes %p for a date that a spreadsheet made, in feet and in inches",
    (serial) => {
      expect(() => readWithin(serial, feet)).toThrow(
        `this looks like a date: write 12' 6" (over 0 to 5000 ft)`,
      );
      expect(() => readWithin(serial, inches)).toThrow(/looks like a date/);
    },
  );

  test.each([-1, 0, "-3 ft", "5001 ft", "2000 m"])("refuses %p and says what is allowed", (given) => {
    expect(() => readWithin(given, feet)).toThrow("must be over 0 to 5000 ft");
  });
});

describe("A number within its range", () => {
  test("says its range in words", () => {
    expect(allowed({ least: 0, most: 90 })).toBe("from 0 to 90");
    expect(allowed({ least: 1, most: 64, whole: true })).toBe("a whole number from 1 to 64");
    expect(allowed({ least: 0, most: 200, over: true })).toBe("over 0 to 200");
    expect(allowed({ least: -12, most: 12, unit: "in" })).toBe("from -12 to 12 in");
  });

  test("refuses a part where only whole numbers are legal", () => {
    expect(() => readWithin(2.5, { least: 0, most: 10, whole: true })).toThrow(
      "must be a whole number from 0 to 10",
    );
  });

  test.each([
    ["12", 12],
    ["12,5", 12.5],
    [" -3.25 ", -3.25],
    ["+4", 4],
    ["5 %", 5],
    [".5", 0.5],
  ])("reads the text %p", (text, expected) => expect(readNumber(text)).toBe(expected));

  test.each(["", "twelve", "1 2", "12 ft", "0x10", "1e5"])("refuses the text %p with an example", (text) => {
    expect(() => readNumber(text)).toThrow(/cannot read .*write a number such as 12/);
  });

  test("refuses a comma that may part thousands", () => expect(() => readNumber("1,500")).toThrow(/comma/));
});
