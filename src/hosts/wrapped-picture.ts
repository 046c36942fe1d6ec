/** A picture of dots, by its address with the data in it, as an SVG text of that size. */
export function wrappedPicture(source: string, width: number, height: number): string {
  const href = source.replace(/[&"<>]/g, (sign) => `&#${sign.charCodeAt(0)};`);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><image href="${href}" width="${width}" height="${height}"/></svg>`;
}
