import { readPriceTable, type StandingPrice } from "../../src/estimate/price-import";
import { tableOfText } from "../../src/estimate/price-text";
import { examplePrices, unpricedRow } from "../../src/estimate/prices";
import { dayNumber } from "../../src/units/day";

const today = dayNumber(2026, 4, 9)!;
const standing: StandingPrice[] = examplePrices.map((row, k) => ({ ...row, at: k + 3 }));
const read = (text: string, some = standing) => readPriceTable(tableOfText(text), some, today);
const one = (line: string) => read(`item\tsize\tprice\n${line}`).lines[0];

describe("a table of prices", () => {
  it("is read with tabs, commas, semicolons and quotes, by its headers in any order", () => {
    const row = { item: "panel", size: 12, price: 1234.5, supplier: "Supplier A (example)", taxed: false };
    for (const text of [
      "Price\tItem\tSupplier\tTaxed\n$1,234.50\tPanel, 12 ft\tSupplier A (example)\tno",
      'Price,Item,Supplier,Taxed\n"$1,234.50",12\' panel,Supplier A (example),no',
      'precio;artículo;proveedor;impuesto\n1.234,50;"Panel 12\'";Supplier A (example);no',
    ])
      expect(read(text).lines).toMatchObject([{ line: 2, row }]);
  });

  it("says of each line whether it is new, changed, unchanged or not understood, and why", () => {
    const own: StandingPrice[] = [{ ...unpricedRow({ item: "panel", size: 12 }), price: 120, at: 3 }];
    const { lines, passedOver } = read(
      "item,size,price,color\nPanel,14 ft,130,\nPanel,12 ft,125,\nPanel,12 ft,125,\nGate leaf,10 ft,call\n\nSaddle,,5",
      own,
    );
    expect(lines.map(({ line, kind }) => [line, kind])).toEqual([
      [2, "new"],
      [3, "changed"],
      [4, "not understood"],
      [5, "not understood"],
      [7, "not understood"],
    ]);
    expect(passedOver).toEqual(["color"]);
    expect(read("item,price\n12' panel,120", own).lines[0].kind).toBe("unchanged");
    expect(read("size,price\n12,5").lines[0]).toMatchObject({ kind: "not understood" });
  });

  it("puts a first price of the user's own in the place of an example", () => {
    const line = read("item,price,supplier\n12 ft panel,141,Supplier B (example)").lines[0];
    expect(line).toMatchObject({
      kind: "changed",
      before: { example: true, price: 123 },
      row: { price: 141 },
    });
  });

  it("finds items by name, key and size, in English and Spanish", () => {
    const cases: [string, string, number | null][] = [
      ["Panel\t12' 6\"\t1", "panel", 12.5],
      ["panel de corral\t3,6576 m\t1", "panel", 12],
      ["4x4 post\t8 ft\t1", "post 4x4", 8],
      ["Post, 4 in round\t96 in\t1", "post 4 in round", 8],
      ["2x6 board 16 ft\t\t1", "rail 2x6 board", 16],
      ["Bag of concrete\t80 lb\t1", "bag", 80],
      ["concrete bag 60 lb\t\t1", "bag", 60],
      ["Truck load hauled\t16 cu yd\t1", "haul", 16],
      ["Gate leaf to hang, 10 ft\t\t1", "hung_gate", 10],
      ["Gate in its frame\t8\t1", "gate", 8],
      ["Sand, by the ton\t\t1", "sand_ton", null],
      ["Mason's line\t\t1", "line", null],
      ["pintura para marcar\t\t1", "paint", null],
    ];
    for (const [text, item, size] of cases)
      expect([text, one(text)]).toMatchObject([text, { row: { item, size } }]);
    expect(cases).toHaveLength(13);
  });

  it("never makes more of a hostile text than a text, and never fails", () => {
    const leads = ["=", "+", "-", "@", "\t=", "\n=", "\r=", " =", "'=", '"=', "\u0000=", "\u200f=", "\u202e=", "\ufeff=", "＝", "%", "|"]; // prettier-ignore
    const bodies = ["1+1", 'HYPERLINK("x")', "cmd|' /C calc'!A0"];
    const others = ["x".repeat(100_000), "\u0000", "<b>panel</b>", "__proto__", "constructor", "𝟙𝟚", "1e999", "NaN", "-5", "Infinity", "{total}", "12' panel\u202e"]; // prettier-ignore
    const hostile = [...leads.flatMap((lead) => bodies.map((body) => lead + body)), ...others];
    expect(hostile.length).toBeGreaterThanOrEqual(40);
    for (const text of hostile) {
      const inItem = readPriceTable(
        [
          ["item", "price"],
          [`Panel 12 ft ${text}`, 5],
          [text, 5],
        ],
        [],
        today,
      );
      const inPrice = readPriceTable(
        [
          ["item", "price"],
          ["Panel 12 ft", text],
        ],
        [],
        today,
      );
      const inSupplier = readPriceTable(
        [
          ["item", "price", "supplier"],
          ["Panel 12 ft", 5, text],
        ],
        [],
        today,
      );
      expect(inPrice.lines.map(({ kind }) => kind)).toEqual(["not understood"]);
      expect(inItem.lines.at(-1)!.text.length).toBeLessThanOrEqual(200);
      for (const line of [...inItem.lines, ...inSupplier.lines])
        if (line.kind === "new")
          expect(`${line.row.name}${line.row.supplier}`).not.toMatch(/[\p{Cc}\p{Cf}]/u);
      expect(() => read(`item,price\n${text},5`)).not.toThrow();
    }
  });
});
