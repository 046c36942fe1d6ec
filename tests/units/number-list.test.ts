import { numbersAsCell, readNumbers } from "../../src/units/number-list";
import { Refusal } from "../../src/units/refusal";

const feet = { unit: "ft", least: -5000, most: 5000 } as const;

describe("several numbers in one text", () => {
  test.each([
    ["80; -12.5; 60", [80, -12.5, 60]],
    ["80, -12.5, 60", [80, -12.5, 60]],
    [`40' 6"; 0`, [40.5, 0]],
    ["12,5; 30", [12.5, 30]],
    ["-3 m; 4", [-3 / 0.3048, 4]],
  ])("%s is read with semicolons, or commas and spaces, between", (text, values) => {
    expect(readNumbers(text, feet)).toEqual(values.map((value) => expect.closeTo(value, 9)));
  });

  test.each(["80;", "80; x", "; 4", "80; 4; "])("%s is refused with an example", (text) => {
    expect(() => readNumbers(text, feet)).toThrow(Refusal);
    expect(() => readNumbers(text, feet)).toThrow(/write/);
  });

  it("come back as a cell holds them: one as a number, several as a text", () => {
    expect(numbersAsCell([2])).toBe(2);
    expect(numbersAsCell([80, -12.5])).toBe("80; -12.5");
    expect(readNumbers(numbersAsCell([80, -12.5, 60]), feet)).toEqual([80, -12.5, 60]);
    expect(readNumbers(numbersAsCell([1e-9, 0.000001]), feet)).toEqual([0, 0.000001]);
    expect(readNumbers(numbersAsCell([2]), feet)).toEqual([2]);
  });
});
