const entities: Record<string, string> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** Text of a file's markup as it is meant. */
export function unescape(text: string): string {
  return text.replace(
    /&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|(\w+));/gi,
    (whole, hex?: string, digits?: string, name?: string) => {
      if (name) return entities[name] ?? whole;
      const code = hex ? parseInt(hex, 16) : Number(digits);
      return code <= 0x10ffff ? String.fromCodePoint(code) : whole;
    },
  );
}

/** The attributes of one tag, by name without regard to a namespace's prefix. */
export function attributes(tag: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const [, name, , double, single] of tag.matchAll(/\s(?:\w+:)?(\w+)\s*=\s*("([^"]*)"|'([^']*)')/g))
    found[name] = unescape(double ?? single);
  return found;
}

/** The attributes of every tag of that name. */
export const tags = (xml: string, name: string) =>
  [...xml.matchAll(new RegExp(`<${name}(?=[\\s/>])[^<>]*>`, "g"))].map(([tag]) => attributes(tag));

/** The first element of that name with all that stands in it, to the last closing tag of the name. */
export function element(xml: string, name: string): string {
  const start = xml.search(new RegExp(`<${name}[\\s>]`));
  const end = xml.lastIndexOf(`</${name}>`);
  return start >= 0 && end > start ? xml.slice(start, end + name.length + 3) : "";
}

/** The texts of every element of that name which holds only text. */
export const texts = (xml: string, name: string) =>
  [...xml.matchAll(new RegExp(`<${name}(?:\\s[^<>]*)?>([^<]*)</${name}>`, "g"))].map(([, text]) =>
    unescape(text),
  );
