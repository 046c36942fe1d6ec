import { inflateSync } from "node:zlib";

/** How many pages a PDF of Chromium's has. */
export const pageCount = (pdf: Buffer) => pdf.toString("latin1").match(/\/Type \/Page\b(?!s)/g)?.length ?? 0;

/** The texts that a PDF of Chromium's shows, run by run, without what lies between them; what pictures say may be left out. */
export function pdfText(pdf: Buffer): string {
  const file = pdf.toString("latin1");
  const objects = new Map(
    [...file.matchAll(/(\d+) 0 obj\n([^]*?)\nendobj/g)].map(([, id, body]) => [id, body] as const),
  );
  const fonts = new Map<string, Map<string, string>>();
  for (const [, name, id] of file.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
    const map = /\/ToUnicode (\d+) 0 R/.exec(objects.get(id) ?? "");
    if (map) fonts.set(name, letters(content(objects.get(map[1]) ?? "")));
  }
  let shown = "";
  for (const body of objects.values()) {
    let font: Map<string, string> | undefined;
    for (const [, name, codes] of content(body).matchAll(/\/(F\d+) [\d.]+ Tf|<([0-9A-F]+)> Tj/g))
      if (name) [font, shown] = [fonts.get(name), `${shown} `];
      else shown += (codes.match(/.{4}/g) ?? []).map((code) => font?.get(code) ?? "").join(""); // prettier-ignore
  }
  return shown;
}

/** What an object's stream holds; nothing where it holds none. */
function content(body: string): string {
  const stream = /stream\n([^]*)\nendstream/.exec(body)?.[1];
  if (stream === undefined) return "";
  if (!body.includes("/FlateDecode")) return stream;
  return inflateSync(Buffer.from(stream, "latin1")).toString("latin1");
}

/** The letters behind a font's codes, out of its map to Unicode. */
function letters(map: string): Map<string, string> {
  const found = new Map<string, string>();
  const letter = (code: number) => String.fromCharCode(code);
  const hex = (code: number) => code.toString(16).toUpperCase().padStart(4, "0");
  for (const [, first, last, to] of map.matchAll(/^<(\w{4})> <(\w{4})> <(\w{4})>$/gm))
    for (let code = parseInt(first, 16); code <= parseInt(last, 16); code++)
      found.set(hex(code), letter(parseInt(to, 16) + code - parseInt(first, 16)));
  for (const [, code, to] of map.matchAll(/^<(\w{4})> <(\w{4})>$/gm))
    found.set(code, letter(parseInt(to, 16)));
  return found;
}
