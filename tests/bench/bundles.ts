import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { type Row } from "./measure";

/** The build, from the top of the project, where npm runs the benchmark. */
const dist = path.resolve("dist");

/** Everything that a page asks for at its first paint: its scripts and styles, but for the Office library. */
function firstLoad(page: string): number {
  const html = readFileSync(path.join(dist, page), "utf8");
  const files = [...html.matchAll(/(?:src|href)="?([\w./-]+\.(?:js|css))"?/g)]
    .map(([, file]) => file)
    .filter((file) => !file.startsWith("http"));
  return files.reduce((sum, file) => sum + gzipped(file), 0);
}

const gzipped = (file: string) => gzipSync(readFileSync(path.join(dist, file)), { level: 9 }).length / 1024;

/** Sizes of the built bundles beside their bars. */
export function bundleRows(): Row[] {
  if (!existsSync(path.join(dist, "taskpane.html"))) {
    console.log("skipped: no build in dist, so no sizes (npm run build)\n");
    return [];
  }
  return [
    { what: "functions.js, gzipped", figure: gzipped("functions.js"), unit: "KB", bar: 40 },
    { what: "panel's first load, gzipped", figure: firstLoad("taskpane.html"), unit: "KB", bar: 80 },
  ];
}
