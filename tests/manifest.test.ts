import { existsSync, readFileSync } from "node:fs";
import { liveFormula } from "../src/sheets/formula";
import { pen } from "../src/sheets/expression";

const manifest = readFileSync("manifest.xml", "utf8");
const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };

/** What a pattern captures, everywhere it matches. */
const all = (pattern: RegExp) => [...manifest.matchAll(pattern)].map(([, ...found]) => found);
const one = (pattern: RegExp) => pattern.exec(manifest)![1];

const resources = new Map(
  all(/<bt:(Image|Url|String) id="([^"]+)" DefaultValue="([^"]+)"\/>/g).map(([kind, id, value]) => [
    id,
    { kind, value },
  ]),
);
const uses = all(/<([\w:]+)[^>]*? resid="([^"]+)"/g);
const addresses = all(/"(https?:\/\/[^"]+)"/g)
  .map(([address]) => address)
  .filter(
    (address) =>
      !address.startsWith("http://schemas.microsoft.com/") && !address.startsWith("http://www.w3.org/"),
  );

/** What the build puts into dist for the add-in. */
const built = [
  "functions.js", "functions.json", "functions.html", "taskpane.html", "help/index.html",
  ...[16, 32, 64, 80, 128].map((size) => `icons/icon-${size}.png`),
]; // prettier-ignore

describe("the manifest", () => {
  it("has the version of the package", () => {
    expect(one(/<Version>(.*)<\/Version>/)).toBe(`${version}.0`);
  });

  it("has a GUID of its own", () => {
    expect(one(/<Id>(.*)<\/Id>/)).toMatch(
      /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/,
    );
  });

  it("has the namespace that formulas are written with", () => {
    const namespace = resources.get(one(/<Namespace resid="([^"]+)"/))!.value;
    expect(liveFormula(pen("AREA", 72))).toBe(`=${namespace}.AREA(72)`);
  });

  it("gives every resource that it names, of the right kind, and uses every one that it gives", () => {
    const kinds: Record<string, string> = { "bt:Image": "Image", SourceLocation: "Url", LearnMoreUrl: "Url" };
    expect(uses.length).toBeGreaterThan(12);
    for (const [element, id] of uses)
      expect([id, resources.get(id)?.kind]).toEqual([id, kinds[element] ?? "String"]);
    expect(new Set(uses.map(([, id]) => id))).toEqual(new Set(resources.keys()));
  });

  it("stays within the host's lengths", () => {
    for (const id of resources.keys()) expect(id.length).toBeLessThanOrEqual(32);
    const strings = (kind: string) =>
      [...one(new RegExp(`<bt:${kind}Strings>([^]*?)</bt:${kind}Strings>`)).matchAll(/DefaultValue="([^"]*)"/g)].map(([, text]) => text.length); // prettier-ignore
    expect(strings("Short")).toHaveLength(4);
    expect(strings("Long")).toHaveLength(2);
    expect(Math.max(...strings("Short"))).toBeLessThanOrEqual(125);
    expect(Math.max(...strings("Long"))).toBeLessThanOrEqual(250);
  });

  it("names only https addresses on one origin, all of them files of the build", () => {
    expect(addresses.length).toBeGreaterThanOrEqual(12);
    for (const address of addresses) {
      expect(new URL(address).origin).toBe("https://localhost:3000");
      expect(built).toContain(new URL(address).pathname.slice(1));
    }
  });

  it("asks for the panel's floor and for errors that carry a message", () => {
    expect(one(/<Set Name="ExcelApi" MinVersion="([^"]+)"/)).toBe("1.14");
    expect(one(/<bt:Set Name="CustomFunctionsRuntime" MinVersion="([^"]+)"/)).toBe("1.2");
  });

  it("runs the functions in their own runtime and shows one button", () => {
    expect(manifest).not.toMatch(/<Runtimes?\b/);
    expect(all(/<(Script|Page|Metadata)>/g).flat()).toEqual(["Script", "Page", "Metadata"]);
    expect(all(/<Control\b[^>]* xsi:type="(\w+)"/g)).toEqual([["Button"]]);
    expect(all(/<Action xsi:type="(\w+)"/g)).toEqual([["ShowTaskpane"]]);
  });
});

describe("the icons", () => {
  it.each([16, 32, 64, 80, 128])("are %i dots wide and tall, as PNG", (size) => {
    const file = `taskpane/icons/icon-${size}.png`;
    expect(existsSync(file)).toBe(true);
    const bytes = readFileSync(file);
    expect(bytes.subarray(1, 4).toString("latin1")).toBe("PNG");
    expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([size, size]);
  });
});
