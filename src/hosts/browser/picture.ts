import { wrappedPicture } from "../wrapped-picture";

const svgStart = "data:image/svg+xml;charset=utf-8,";

/** An SVG text as the source of an image: it draws, and nothing in it runs or loads. */
export const pictureSource = (svg: string) => svgStart + encodeURIComponent(svg);

/** The SVG text behind an image's source; a picture of another kind is wrapped into one. */
export function pictureSvg(source: string, width: number, height: number): string {
  if (source.startsWith(svgStart)) return decodeURIComponent(source.slice(svgStart.length));
  return wrappedPicture(source, width, height);
}

/** True for an image that is held in the workbook itself and not fetched from elsewhere. */
export const isOwnPicture = (source: unknown): source is string =>
  typeof source === "string" && /^data:image\/(svg\+xml|png|jpeg|gif|webp|bmp)[;,]/i.test(source);
