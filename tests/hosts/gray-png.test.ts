import fc from "fast-check";
import { chromium, type Browser } from "playwright-core";
import { grayPng } from "../../src/hosts/gray-png";
import { describeInBrowser } from "./browser/page";
import { executablePath } from "./browser/pages";

/** Dots as a canvas gives them, of shades from 0 to 255. */
const dotsOf = (shades: number[]) =>
  Uint8ClampedArray.from(shades.flatMap((shade) => [shade, shade, shade, 255]));

/** The nearest of the six shades that are kept; four bits hold them exactly (ISO/IEC 15948, 12.5: samples of a smaller depth spread over the whole range). */
const kept = (shade: number) => Math.round(shade / 51) * 51;

describeInBrowser("a picture in shades of gray", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  });
  afterAll(() => browser?.close());

  test("is a PNG that a browser reads back dot by dot, of any width and height", async () => {
    const page = await browser.newPage();
    const picture = fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 })).chain(([width, height]) =>
      fc.record({
        width: fc.constant(width),
        height: fc.constant(height),
        shades: fc.array(fc.integer({ min: 0, max: 255 }), { minLength: width * height, maxLength: width * height }),
      }),
    );
    await fc.assert(
      fc.asyncProperty(picture, async ({ width, height, shades }) => {
        const png = await grayPng(dotsOf(shades), width, height);
        const read = await page.evaluate(async (base64) => {
          const image = new Image();
          image.src = `data:image/png;base64,${base64}`;
          await image.decode();
          const canvas = document.createElement("canvas");
          [canvas.width, canvas.height] = [image.width, image.height];
          const paper = canvas.getContext("2d")!;
          paper.drawImage(image, 0, 0);
          return { width: image.width, height: image.height, dots: [...paper.getImageData(0, 0, image.width, image.height).data] };
        }, Buffer.from(png!).toString("base64"));
        expect(read).toEqual({ width, height, dots: [...dotsOf(shades.map(kept))] });
      }),
      { numRuns: 60 },
    );
  });

  test("is none where a dot has a color", async () => {
    const dots = dotsOf([0, 255]);
    dots[1] = 1;
    expect(await grayPng(dots, 2, 1)).toBeUndefined();
  });
}); // prettier-ignore
