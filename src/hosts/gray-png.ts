/** Shades from black to white that are kept, of the sixteen that four bits hold: enough for ink on paper, and a smaller file. */
const SHADES = 6;

/** The nearest shade that is kept to a value from 0 (black) to 255 (white), in four bits. */
const shadeOf = (value: number): number => Math.round((value / 255) * (SHADES - 1)) * (15 / (SHADES - 1));

/**
 * A picture in shades of gray as a PNG file (ISO/IEC 15948) of four bits a dot: a drawing in ink takes a third of what a
 * canvas's own file does. `dots` are red, green, blue and opacity of each dot from 0 to 255, row by row, on white, as
 * a canvas gives them. Undefined where a dot has a color.
 */
export async function grayPng(
  dots: Uint8ClampedArray,
  width: number,
  height: number,
): Promise<Uint8Array | undefined> {
  for (let k = 0; k < dots.length; k += 4)
    if (dots[k] !== dots[k + 1] || dots[k] !== dots[k + 2]) return undefined;
  const line = 1 + Math.ceil(width / 2);
  const lines = new Uint8Array(line * height);
  // Each line begins with its filter, 0 for none; the left one of two dots stands in the upper four bits.
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      lines[y * line + 1 + (x >> 1)] |= shadeOf(dots[4 * (y * width + x)]) << (x % 2 ? 0 : 4);
  const header = new Uint8Array([...fourBytes(width), ...fourBytes(height), 4, 0, 0, 0, 0]);
  return joined([
    Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a),
    chunk("IHDR", header),
    chunk("IDAT", await deflated(lines)),
    chunk("IEND", new Uint8Array()),
  ]);
}

async function deflated(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream("deflate"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/** Length, name, content, and the check of name and content. */
function chunk(name: string, content: Uint8Array): Uint8Array {
  const checked = joined([new TextEncoder().encode(name), content]);
  return joined([fourBytes(content.length), checked, fourBytes(crc32(checked))]);
}

/** The cyclic redundancy check of annex D of the standard. */
function crc32(bytes: Uint8Array): number {
  let check = ~0;
  for (const byte of bytes) {
    check ^= byte;
    for (let bit = 0; bit < 8; bit++) check = (check >>> 1) ^ (check & 1 ? 0xedb88320 : 0);
  }
  return ~check;
}

const fourBytes = (value: number) => Uint8Array.of(value >>> 24, value >>> 16, value >>> 8, value);

function joined(parts: Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  parts.reduce((at, part) => (whole.set(part, at), at + part.length), 0);
  return whole;
}
