import fc from "fast-check";
import { boughtItems } from "../../../src/estimate/bought-items";
import { newJob, type Job } from "../../../src/estimate/job";
import { contentOfPlans } from "../../../src/sheets/calculate";
import { messages } from "../../../src/sheets/documents/messages";
import { orderEntries } from "../../../src/sheets/documents/purchase-order";
import { purchaseWords } from "../../../src/sheets/documents/purchase-words";
import { readDocument } from "../../../src/sheets/documents/read";
import { readRequest, requestAnswers, type FilledLine } from "../../../src/sheets/documents/read-request";
import { specEntries, specWords } from "../../../src/sheets/documents/request-specs";
import { boughtOf } from "../../../src/sheets/documents/source";
import { plainCopy } from "../../../src/sheets/plain-copy";
import { shownBy } from "../shown";
import { pen, sourcesOf, wordsOf, worked } from "./books";
import { asked, filledIn, requestOf } from "./requests";

const panels: Job = {
  ...newJob(),
  gate_1: 10,
  customer: "Invented Customer",
  site: "Copperleaf Bend (invented)",
};
const posts: Job = {
  ...newJob(),
  structure: "post pen",
  leaf_1: 12,
  setting: "concrete",
  customer: "Invented Customer",
};
const made = requestOf([panels, posts]);
const lineOf = (item: string, lines: readonly FilledLine[]) => lines.find((line) => line.item === item)!;
const priceColumn = readRequest(shownBy(made.sheet)).columns.price!;

describe("a price request", () => {
  it("asks for what the estimates buy, waste included, like items added up and no work of the crew's", () => {
    const { sources } = sourcesOf([panels, panels]);
    const [one, two] = [sources.slice(0, 1), sources].map((some) => boughtItems(some.map(boughtOf)));
    expect(two.map(({ name }) => name)).toEqual(one.map(({ name }) => name));
    two.forEach(({ quantity }, k) => expect(quantity).toBeCloseTo(2 * one[k].quantity, 9));
    const stakes = sources[0].made;
    const counted = stakes.takeoff.find(({ key }) => key === "stakes")!.counted!;
    expect(one.find(({ item }) => item === "stake")!.quantity).toBe(Math.ceil(counted * 1.1 - 1e-9));
    expect(made.items.map(({ item }) => item)).not.toContain("hole");
    const { lines, notUnderstood } = readRequest(shownBy(made.sheet));
    expect(lines.map(({ item, quantity, unit }) => ({ item, quantity, unit }))).toEqual(
      made.items.map(({ name, quantity, unit }) => ({ item: name, quantity, unit })),
    );
    expect(notUnderstood).toEqual(made.items.map(({ name }) => purchaseWords.noPrice(name)));
  });

  it("says each item's full specification, live on the request's own entries", () => {
    const { lines } = readRequest(shownBy(made.sheet));
    for (const item of made.items) expect(lineOf(item.name, lines).words).toBe(specWords(item, made.entries));
    expect(lineOf("Gate in its frame, 10 ft", lines).words).toBe(
      "frame 10 ft pin to pin, hinges right, seen from outside, no bow, 5 ft high, 6 rails, 1 3/4 in round tube, 16 gauge, galvanized, joined by pins",
    );
    const other = requestOf([panels], { panel_height: 5.5, panel_tube: null, gate_swing: "=1+1" });
    const said = readRequest(shownBy(other.sheet)).lines;
    expect(lineOf("Panel, 12 ft", said).words).toBe(
      "12 ft pin to pin, 5.5 ft high, 6 rails, galvanized, joined by pins",
    );
    expect(lineOf("Gate in its frame, 10 ft", said).words).toContain(", =1+1, ");
  });

  it("says what bolts, a kick board and hardware bought apart have to be, with the bolts' length by the job's posts and rails", () => {
    const two = {
      ...posts,
      fastener: "bolts",
      kick_board: "2x10",
      gates_of_two: 1,
      gate_hardware: "bought apart",
    };
    const words = (item: string) => lineOf(item, readRequest(shownBy(requestOf([two]).sheet)).lines).words;
    // Common practice, no source: through a 6 in post and a 1 1/2 in rail, and an inch for washer and nut.
    expect(words("Bolt for rails, with nut and washer")).toBe(
      "carriage bolt through post and rail, with nut and washer, 8 1/2 in long, hot-dip galvanized",
    );
    expect(words("Kick board, 2x10, 16 ft")).toBe("16 ft long, treated for ground contact");
    expect(words("Hinges of a gate leaf, a set")).toMatch(/^two to a leaf, adjustable/);
    expect(words("Gate leaf to hang, 12 ft")).toBe("leaf 12 ft wide, right and left hand, tube gate");
    expect(lineOf("Screw for rails", readRequest(shownBy(made.sheet)).lines).words).toBe(
      "exterior wood screw, 3 in long, hot-dip galvanized",
    );
  });

  it("gives every entry of its own back", () => {
    const read = readDocument(shownBy(made.sheet), specEntries(made.items));
    expect(read.problems).toEqual({});
    for (const { key } of specEntries(made.items)) expect(read.entries[key]).toBe(made.entries[key] ?? null);
    expect(wordsOf(made.sheet)).toContain(asked.dump_at);
    expect(wordsOf(made.sheet)).toContain("up to 16 cu yd");
  });

  it("holds no price, no amount, no total and nothing of the customer", () => {
    const shown = made.sheet.cells.map(({ value }) => value);
    const says = wordsOf(made.sheet);
    expect(says).not.toContain("Invented Customer");
    let searched = 0;
    for (const { sheet, made: figures } of made.sources)
      for (const line of figures.lines) {
        for (const money of [line.amount, line.price]) {
          if (!money) continue;
          expect(shown).not.toContain(money.toNumber());
          searched++;
        }
        expect(shown).not.toContain(sheet.cells.total.value);
      }
    expect(searched).toBeGreaterThan(30);
    const formulas = made.sheet.cells.flatMap(({ formula }) => formula ?? []);
    const costs = made.sources.flatMap(({ name, sheet }) =>
      Object.entries(sheet.cells)
        .filter(([key]) =>
          /_(price|amount|taxed)$|^(direct|total|tax|profit|overhead|customer|budget)/.test(key),
        )
        .map(
          ([, { row, column }]) =>
            `${name === "Estimate" ? "Estimate" : `'${name}'`}!${String.fromCharCode(65 + column)}${row + 1}`,
        ),
    );
    expect(costs.length).toBeGreaterThan(60);
    for (const formula of formulas)
      for (const cost of costs)
        expect(`${formula} `).not.toMatch(new RegExp(`${cost.replace(/[$']/g, "\\$&")}(?!\\d)`));
  });

  it("says OUT OF DATE once a quantity of its estimates has changed, and not before", () => {
    expect(wordsOf(made.sheet)).not.toContain(messages.outOfDate);
    const { row, column } = made.sources[0].sheet.cells.stakes_use;
    const plans = made.plans.map((plan) =>
      plan.name !== "Estimate"
        ? plan
        : {
            ...plan,
            cells: plan.cells.map((cell) =>
              cell.row === row && cell.column === column
                ? { ...cell, says: { kind: "constant" as const, value: 90 } }
                : cell,
            ),
          },
    );
    expect(wordsOf(worked(plans, made.request))).toContain(messages.outOfDate);
  });
});

describe("the plain copy of a price request", () => {
  it("stands alone, is not out of date, and is read again as the request is", () => {
    const book = contentOfPlans([...made.plans, made.request], pen);
    const { sheets } = plainCopy(book, pen, { sheets: ["Price request"], keepKeys: false });
    expect(sheets.map(({ name }) => name)).toEqual(["Price request"]);
    const [sheet] = sheets;
    for (const { formula = "" } of sheet.cells) expect(formula).not.toMatch(/!|PEN/);
    expect(wordsOf(sheet)).not.toMatch(/OUT OF DATE|line_1_|Invented Customer/);
    const [copied, ours] = [shownBy(sheet), shownBy(made.sheet)];
    const linesOf = (shown: typeof ours) =>
      readRequest(shown).lines.map(({ item, words, quantity, unit }) => ({ item, words, quantity, unit }));
    expect(linesOf(copied)).toEqual(linesOf(ours));
    expect(requestAnswers(copied, orderEntries)).toMatchObject({
      supplier: "Invented Supply",
      opening: 14,
      number: 3,
    });
  });
});

describe("a filled-in price request", () => {
  const filled = readRequest(shownBy(made.sheet)).lines;
  const price = fc.oneof(fc.integer({ min: 0, max: 500_000 }).map((cents) => cents / 100), fc.constant(null));

  it("is read as it was filled in, with rows shuffled, others put between, and a column put in", () => {
    fc.assert(
      fc.property(
        fc.array(price, { minLength: filled.length, maxLength: filled.length }),
        fc.shuffledSubarray(filled, { minLength: filled.length }),
        fc.array(fc.nat({ max: filled.length }), { maxLength: 4 }),
        fc.boolean(),
        (prices, order, between, column) => {
          const { values } = filledIn(made.sheet, filled.map(({ row }, k) => ({ row, column: priceColumn, value: prices[k] })));
          const rows = order.map(({ row }) => values[row]);
          for (const at of between) rows.splice(at, 0, ["", "We no longer carry these", ""]);
          values.splice(filled[0].row, filled.length, ...rows);
          if (column) for (const row of values) row.splice(1, 0, "x");
          const read = readRequest({ values }).lines;
          expect(read.map(({ item, price: said }) => [item, said])).toEqual(
            order.map((line) => [line.item, prices[filled.indexOf(line)]]),
          );
        },
      ),
      { numRuns: 60 },
    );
  });

  it.each([
    ["$1,234.50", 1234.5], ["12.50 each", 12.5], ["9.75/ea", 9.75], ["17.5 per ton", 17.5], ["23 / cu yd", 23], ["1,234", 1234], ["0", 0], [" 8 ", 8],
  ])("reads %s as a price", (written, value) => {
    const { lines, notUnderstood } = readRequest(filledIn(made.sheet, [{ row: filled[0].row, column: priceColumn, value: written }]));
    expect(lines[0].price).toBe(value);
    expect(notUnderstood).toHaveLength(filled.length - 1);
  });

  it.each(["call us", "-5", "12 or 13", "5 %", "n/a", "=1+1", "12.5.1"])(
    "says that %s is no price, and takes none",
    (written) => {
      const { lines, notUnderstood } = readRequest(filledIn(made.sheet, [{ row: filled[0].row, column: priceColumn, value: written }]));
      expect(lines[0].price).toBeNull();
      expect(notUnderstood[0]).toBe(purchaseWords.notMoney(filled[0].item, written));
    },
  );

  it("names a price that stands without an item, and lines of the supplier's own are kept", () => {
    const { values } = shownBy(made.sheet);
    values.splice(filled[1].row, 0, [null, "", "", null, null, 5], [null, "Pallet", "", 2, "each", "15.00"]);
    const { lines, notUnderstood } = readRequest({ values });
    expect(lines.find(({ item }) => item === "Pallet")).toMatchObject({ quantity: 2, price: 15, unit: "each" });
    expect(notUnderstood).toContain(purchaseWords.noItem(filled[1].row + 1));
  });

  it("is refused where it is none, whatever the sheet holds", () => {
    expect(() => readRequest({ values: [] })).toThrow(purchaseWords.noHeads);
    expect(() => readRequest({ values: [["Item", "Unit price"]] })).toThrow(purchaseWords.noLines);
    fc.assert(
      fc.property(fc.array(fc.array(fc.oneof(fc.string(), fc.double(), fc.boolean(), fc.constant(null)), { maxLength: 6 }), { maxLength: 8 }), (values) => {
        expect(() => readRequest({ values })).toThrow(purchaseWords.noHeads);
      }),
      { numRuns: 100 },
    );
  });
}); // prettier-ignore
