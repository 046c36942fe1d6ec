import { listed } from "../../src/estimate/listed";
import {
  countInWords,
  otherSizesSentence,
  penSentence,
  piecesSentence,
  groundSentences,
  sandSentence,
  sandWarnings,
} from "../../src/estimate/sentences";
import { type LaidLayer } from "../../src/estimate/layers";
import { penOf } from "../drawing/pens";

const sand = (given: Partial<LaidLayer>): LaidLayer => ({
  need: 37.3,
  counts: [null, null, null, null],
  trucks: [null, null, null, null],
  delivered: 37.3,
  tons: 50,
  overPercent: 0,
  depthLoose: 3,
  depthSettled: 3,
  ...given,
});

describe("a pen in a builder's words", () => {
  it("says what closes it and how large it is", () => {
    expect(penSentence(penOf([[12, 18]], [10]))).toBe(
      "18 panels of 12 ft and one 10 ft gate: 72 ft 3 1/4 in across the pins, 71 ft 3 1/4 in clear inside, 72 ft 3 1/4 in outside",
    );
  });

  it("counts in words below ten, says one piece in the singular, and puts like gates together", () => {
    expect(piecesSentence(penOf([[16, 1], [12, 9], [5.5, 10]], [8, 12, 8]))).toBe(
      "one panel of 16 ft, nine panels of 12 ft, 10 panels of 5 ft 6 in, two 8 ft gates and one 12 ft gate",
    );
  }); // prettier-ignore

  it("passes over a length of which no panel is used, and says that there is no gate", () => {
    expect(piecesSentence(penOf([[12, 14], [10, 0]]))).toBe("14 panels of 12 ft, no gate"); // prettier-ignore
  });

  it("says the sizes of one panel fewer and one more, and of which length where there are several", () => {
    const pen = { ...penOf([[12, 18]], [10]), oneUnder: 68.45, oneOver: 76.07 };
    expect(otherSizesSentence(pen)).toBe("One panel fewer: 68 ft 5 1/2 in; one more: 76 ft 0 3/4 in");
    const mixed = { ...penOf([[12, 4], [10, 2]]), oneUnder: null, oneOver: 20 }; // prettier-ignore
    expect(otherSizesSentence(mixed)).toBe("One 12 ft panel fewer: closes nothing; one more: 20 ft");
  });

  it("joins none, one, two and three parts", () => {
    expect([[], ["a"], ["a", "b"], ["a", "b", "c"]].map(listed)).toEqual(["", "a", "a and b", "a, b and c"]);
    expect([0, 1, 9, 10, 1200].map(countInWords)).toEqual(["no", "one", "nine", "10", "1,200"]);
  });
});

describe("sand in a builder's words", () => {
  it("says the loads, the yards, what they are short, and the depth", () => {
    const given = {
      counts: [1, 2, null, null],
      trucks: [16, 10, null, null],
      delivered: 36,
      overPercent: -3.5,
    };
    expect(sandSentence(sand({ ...given, depthLoose: 2.89, depthSettled: 2.89 }))).toBe(
      "one 16 and two 10s: 36 yards, 3.5 % short, 2 7/8 in loose",
    );
  });

  it("says what is over, and the settled depth where that is another", () => {
    const given = {
      counts: [4, 0, null, null],
      trucks: [10, 8, null, null],
      delivered: 40,
      overPercent: 7.2,
    };
    expect(sandSentence(sand({ ...given, depthLoose: 3.25, depthSettled: 2.75 }))).toBe(
      "four 10s: 40 yards, 7.2 % over, 3 1/4 in loose, 2 3/4 in settled",
    );
  });

  it("says an exact delivery as just that, also where it is exact but for what rounds away", () => {
    for (const overPercent of [0, 0.04, -0.04])
      expect(sandSentence(sand({ overPercent }))).toBe(
        "By the yard: 37.3 yards, just what is needed, 3 in loose",
      );
  });

  it("says loads of a size from ten on, where two figures would meet, and one yard in the singular", () => {
    const many = sand({ counts: [28, 1, null, null], trucks: [10, 8.5, null, null], delivered: 288.5 });
    expect(sandSentence(many)).toMatch(/^28 loads of 10 and one 8.5: 288.5 yards/);
    expect(sandSentence(sand({ delivered: 1 }))).toContain(": 1 yard,");
  });

  it("says that there is no sand, and what the user's own loads bring where none is needed", () => {
    expect(sandSentence(sand({ need: 0, delivered: 0, overPercent: null }))).toBe("No sand");
    const own = { need: 0, counts: [1, null, null, null], trucks: [10, null, null, null], delivered: 10 };
    expect(sandSentence(sand({ ...own, overPercent: null, depthLoose: 1, depthSettled: 1 }))).toBe(
      "one 10: 10 yards, none needed, 1 in loose",
    );
    expect(
      sandSentence(sand({ counts: [0, null, null, null], trucks: [10, null, null, null], delivered: 0, overPercent: -100, depthLoose: 0, depthSettled: 0 })),
    ).toBe("No load: 0 yards, 100 % short, 0 in loose");
  }); // prettier-ignore

  it("names base and sand where there are both, the base as deep as it lies compacted and in how many lifts", () => {
    const given = { counts: [3, null, null, null], trucks: [16, null, null, null], delivered: 48, overPercent: 2, depthSettled: 4.12 };
    const [alone, none] = [sand({}), sand({ need: 0, delivered: 0, overPercent: null })];
    expect(groundSentences(sand(given), alone, 4)).toEqual([
      "Base, three 16s: 48 yards, 2 % over, 4 1/8 in compacted",
      "Sand, by the yard: 37.3 yards, just what is needed, 3 in loose",
    ]);
    expect(groundSentences(sand(given), none, 6)).toEqual([expect.stringMatching(/compacted in two lifts$/), "No sand"]);
    expect(groundSentences(none, alone, 0)).toEqual([sandSentence(alone)]);
  }); // prettier-ignore

  it("warns of more than 10 % over, else of more than 6 in, as the sheet does", () => {
    const [deep, much] = ["Loose sand over 6 in strains tendons", "More than 10 % over what is needed"];
    expect(sandWarnings(sand({ overPercent: 10.1, depthLoose: 3 }), 3)).toEqual([much]);
    expect(sandWarnings(sand({ overPercent: 10.1, depthLoose: 7 }), 6)).toEqual([deep, much]);
    expect(sandWarnings(sand({ overPercent: 10, depthLoose: 5 }), 6.5)).toEqual([deep]);
    expect(sandWarnings(sand({ overPercent: null, depthLoose: 6 }), 6)).toEqual([]);
  });
});
