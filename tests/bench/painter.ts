import { existsSync, readFileSync } from "node:fs";
import { chromium } from "playwright-core";
import ts from "typescript";
import { type Painter } from "../../src/hosts/svg-to-png";
import { executablePath } from "../hosts/browser/pages";

/** The source of a module as a browser takes it, with its imports of other such modules inside. */
function moduleUrl(path: string, imports: Record<string, string> = {}): string {
  const { outputText } = ts.transpileModule(readFileSync(path, "utf8"), {
    compilerOptions: { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2022 },
  });
  const whole = Object.entries(imports).reduce((text, [name, url]) => text.replace(`"${name}"`, `"${url}"`), outputText);
  return `data:text/javascript;base64,${Buffer.from(whole).toString("base64")}`;
} // prettier-ignore

/** Lends the adapter's own painter, run in Chromium, so that pictures count as the files that are really sent. */
export async function withPainter<T>(work: (paint: Painter) => Promise<T>): Promise<T> {
  if (!existsSync(executablePath)) throw new Error("chromium is missing: pictures cannot be counted");
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  try {
    const page = await browser.newPage();
    const painter = moduleUrl("src/hosts/svg-to-png.ts", {
      "./base64": moduleUrl("src/hosts/base64.ts"),
      "./gray-png": moduleUrl("src/hosts/gray-png.ts"),
    });
    return await work((svg, width, height) =>
      page.evaluate(
        async ([url, ...picture]) => ((await import(url)) as { svgToPng: Painter }).svgToPng(...picture),
        [painter, svg, width, height] as const,
      ),
    );
  } finally {
    await browser.close();
  }
}
