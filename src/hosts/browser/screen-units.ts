/** Screen pixels of a length in points: a sheet's row heights and picture sizes are points. */
export const pixelsOfPoints = (points: number) => Math.round((points * 96) / 72);

/** Points of a length in screen pixels. */
export const pointsOfPixels = (pixels: number) => (pixels * 72) / 96;

/** Screen pixels of a column that is so many digits of the default font wide, with the usual margin of 5 pixels. */
export const pixelsOfColumn = (digits: number) => Math.round(digits * 7 + 5);

/** The digits of the default font that fit a column so many screen pixels wide. */
export const columnOfPixels = (pixels: number) => Math.max(0, (pixels - 5) / 7);
