import { fields } from "../../../src/estimate/fields";
import { figureFields } from "../../../src/estimate/figure-list";
import { templateFields } from "../../../src/sheets/template/field-names";
import { publishedNames } from "./published-names";

test("every published name of a field still stands for the same cells", () => {
  const now = [...templateFields.values()].map(({ name, from, keys }) => `${name} = ${from} of ${keys.join(" + ")}`);
  for (const published of publishedNames) expect(now).toContain(published);
}); // prettier-ignore

test("every name of a field is published", () => {
  const published = publishedNames.map((line) => line.split(" = ")[0]);
  expect([...templateFields.keys()].filter((name) => !published.includes(name))).toEqual([]);
});

test("every field and every figure of an estimate has a name", () => {
  const named = new Set([...templateFields.values()].flatMap(({ keys }) => keys));
  const wanted = [...fields, ...figureFields].map(({ key }) => key).filter((key) => !key.endsWith("_use"));
  expect(wanted.filter((key) => !named.has(key))).toEqual([]);
});

test("a name is plain words without braces and colons, in lower case", () => {
  for (const name of templateFields.keys()) expect(name).toMatch(/^[a-z0-9]+( [a-z0-9]+)*$/);
});

test("money, numbers and texts are told apart", () => {
  const reading = (name: string) => templateFields.get(name)?.reading;
  expect(reading("total")).toBe("money");
  expect(reading("panel 1 amount")).toBe("money");
  expect(reading("fence sum")).toBe("money");
  expect(reading("panel 1 count")).toBe("number");
  expect(reading("posts")).toBe("number");
  expect(reading("size")).toBe("number");
  expect(reading("size in feet and inches")).toBe("text");
  expect(reading("customer")).toBe("text");
});
