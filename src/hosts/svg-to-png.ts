import { base64 } from "./base64";
import { grayPng } from "./gray-png";

/** Draws an SVG text of this size (points) as PNG and hands it back in base64. */
export type Painter = (svg: string, width: number, height: number) => Promise<string>;

/** Dots a point, so that the picture is sharp on paper. */
const sharpness = 1.5;

/** Draws an SVG text through the page's own canvas, on white so that it reads on a dark sheet too. */
export const svgToPng: Painter = async (svg, width, height) => {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(width * sharpness);
  canvas.height = Math.round(height * sharpness);
  const paper = canvas.getContext("2d", { willReadFrequently: true })!;
  paper.fillStyle = "#ffffff";
  paper.fillRect(0, 0, canvas.width, canvas.height);
  paper.drawImage(image, 0, 0, canvas.width, canvas.height);
  const dots = paper.getImageData(0, 0, canvas.width, canvas.height);
  // What has colors takes the larger file, and so does a browser without a compressor of its own (before 2023).
  const gray = "CompressionStream" in window && (await grayPng(dots.data, canvas.width, canvas.height));
  if (gray) return base64(gray);
  return canvas.toDataURL("image/png").split(",")[1];
};
