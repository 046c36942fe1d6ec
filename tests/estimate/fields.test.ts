import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { fields } from "../../src/estimate/fields";

const root = path.join(__dirname, "../..");
const rooms = ["src", "taskpane", "functions"];
const list = "src/estimate/fields.ts";

/** Every source file by its path from the top. */
const sources = rooms
  .flatMap((room) =>
    readdirSync(path.join(root, room), { recursive: true, encoding: "utf8" }).map(
      (file) => `${room}/${file}`,
    ),
  )
  .filter((file) => file.endsWith(".ts") && !file.endsWith(".d.ts") && file !== list);

/** Field keys that are words of their own in code for other reasons: a price item, a column, a unit. */
const words = new Set(["size", "site", "profit", "tax", "short", "depth"]);
const keys = fields.map(({ key }) => key).filter((key) => !words.has(key));

describe("the list of a job's fields", () => {
  it("is the only one: no other file spells out the labels of fields", () => {
    const labels = fields.map(({ label }) => label.en).filter((label) => label.includes(" "));
    for (const file of sources) {
      const text = readFileSync(path.join(root, file), "utf8");
      expect({ file, repeated: labels.filter((label) => text.includes(`"${label}"`)) }).toEqual({
        file,
        repeated: [],
      });
    }
  });

  it("is the only one: no other file lists four or more keys of fields in a row", () => {
    const row = new RegExp(`(?:["']?(?:${keys.join("|")})["']?\\s*(?::[^,;\\n]*)?,\\s*){4}`);
    // The invented example job answers fields by key; it lists answers, and the compiler holds it to no second list.
    for (const file of sources.filter((one) => one !== "src/sheets/demo.ts"))
      expect({ file, second: row.exec(readFileSync(path.join(root, file), "utf8"))?.[0] }).toEqual({
        file,
        second: undefined,
      });
  });
});
