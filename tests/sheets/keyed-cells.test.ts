import fc from "fast-check";
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

const pairs: KeyPair[] = [
  ...["quantity", "price", "amount", "taxed", "count", "use"].map((column): KeyPair => [
    column,
    `leaf_1_${column}`,
  ]),
  ["input", "leaf_1"],
  ["written", "leaf_1_written"],
  ["left", "left"],
  ["price", "sand_price"],
  ["use", "sand_use"],
];

test("keys that end in the names of their columns share a text, and are read back one by one", () => {
  expect(keyList(pairs)).toBe("line*,use*,input,written*=leaf_1 left=left price*,use*=sand");
  expect(keyPairs(keyList(pairs)).sort()).toEqual([...pairs].sort());
});

test("any list of keys is read back as it was", () => {
  const name = fc.constantFrom(
    "quantity",
    "price",
    "amount",
    "taxed",
    "count",
    "item",
    "unit",
    "use",
    "input",
  );
  const key = fc.tuple(name, fc.constantFrom("a", "a_price", "b_1"), fc.boolean());
  const pair = key.map(([column, base, ends]): KeyPair => [column, ends ? `${base}_${column}` : base]);
  fc.assert(
    fc.property(fc.uniqueArray(pair, { selector: String, maxLength: 18 }), (some) => {
      expect(some.length ? keyPairs(keyList(some)).sort() : []).toEqual([...some].sort());
    }),
  );
});

test("the shared texts of older sheets are still read, with the star in the key", () => {
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
