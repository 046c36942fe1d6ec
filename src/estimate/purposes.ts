/** A size that suits a purpose, and why. Sizes in ft. */
export interface Suggestion {
  size: number;
  why: string;
}

/**
 * Sizes by purpose. Ground work 40 to 50 ft, riding 65 ft and more with 66 ft matching the 20 m circle, cow work 80
 * to 200 ft: Horsekeeping on a Small Acreage (handbook), p. 382 and 391. Starting rank horses: common practice, no
 * source.
 */
export const suggestions: Record<string, Suggestion> = {
  "ground work": {
    size: 50,
    why: "ground work asks for 40 to 50 ft: near enough to stay in touch, wide enough to move on.",
  },
  riding: { size: 66, why: "riding asks for 65 ft and more, and 66 ft matches the 20 m circle." },
  "starting rank horses": {
    size: 60,
    why: "a rank horse needs room to move off, and you need to reach it: about 60 ft.",
  },
  cattle: { size: 100, why: "cow work asks for 80 to 200 ft." },
};
