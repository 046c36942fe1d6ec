import { keyedCells, keyList, keyPairs, type KeyPair } from "../../src/sheets/keyed-cells";

const sheet = [
  ["penstake sample 1", "label", "value", "use"],
  ["value=size use=size_use", "Size across", 72, 70],
  [null, "A row of the user's", 3, 4],
  ["value=fit", "Fit", "nearest", null],
];

test("cells are found by key wherever rows and columns were inserted", () => {
  expect(keyedCells(sheet)).toEqual({
    size: { row: 1, column: 2, value: 72 },
    size_use: { row: 1, column: 3, value: 70 },
    fit: { row: 3, column: 2, value: "nearest" },
  });
  const moved = sheet.map(([key, ...row]) => [key, "inserted", ...row]);
  moved.splice(1, 0, [null, null, null, null]);
  expect(keyedCells(moved).size).toEqual({ row: 2, column: 3, value: 72 });
});

test("of two rows with one key the upper counts", () => {
  expect(keyedCells([...sheet, ["value=size", "Copied", 99, null]]).size.value).toBe(72);
});

test("a sheet without keys, a blank one, and keys out of shape lead to no cell", () => {
  expect(keyedCells([])).toEqual({});
  expect(keyedCells([["My list", "value"], ["size", 72], ["=size", 72], ["other=size", 72], [5, 72]])).toEqual({}); // prettier-ignore
  expect(keyedCells([sheet[0], ["value=__proto__ value=constructor", "", 1, 2]])).toEqual({});
});

test("keys that end in the names of their columns share a text, and are read back one by one", () => {
  const pairs: KeyPair[] = [
    ["quantity", "sand_quantity"],
    ["price", "sand_price"],
    ["input", "depth"],
    ["use", "sand_use"],
    ["left", "left"],
    ["amount", "sum_sand"],
  ];
  expect(keyList(pairs)).toBe("quantity,price,use=sand_* input=depth left=left amount=sum_sand");
  expect(keyPairs(keyList(pairs)).sort()).toEqual([...pairs].sort());
  expect(
    keyedCells([
      ["penstake sample 1", "use", "value"],
      ["use,value=size_*", 70, 72],
    ]),
  ).toEqual({
    size_use: { row: 1, column: 1, value: 70 },
    size_value: { row: 1, column: 2, value: 72 },
  });
});
