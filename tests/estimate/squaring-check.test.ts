import { measures, squaringCheck } from "../../src/estimate/squaring-check";

/** The six measures of a sheared arena: its far corners slid along the far end by so many feet. */
function taped(length: number, width: number, slid: number): Record<string, string> {
  const side = String(Math.hypot(length, slid));
  const values = [
    side,
    String(width),
    side,
    String(width),
    String(Math.hypot(length, width + slid)),
    String(Math.hypot(length, width - slid)),
  ];
  return Object.fromEntries(measures.map(({ key }, k) => [key, values[k]]));
}

describe("the squaring check of an arena", () => {
  it("says nothing until all six measures are there, and what it cannot read beside the measure", () => {
    const { sentences, problems, read } = squaringCheck({ measured_left: "200'", measured_far: "a hundred" }, 200, 100);
    expect(sentences).toEqual([]);
    expect(read).toMatchObject({ measured_left: 200, measured_far: null });
    expect(Object.keys(problems)).toEqual(["measured_far"]);
  });

  it("finds a true arena square", () => {
    expect(squaringCheck(taped(200, 100, 0), 200, 100).sentences).toEqual([
      "The six measures fit one another.",
      "The corners are square, and as far apart as they should be.",
    ]);
  });

  it("says which corner slides where, and by how many inches", () => {
    // The sides lean by half a foot on 200 ft: over the 100 ft of an end that is 3 in along the left side.
    const { sentences } = squaringCheck(taped(200, 100, 0.5), 200, 100);
    expect(sentences[0]).toBe("The six measures fit one another.");
    expect(sentences.slice(1)).toEqual([
      "Far right: slide 3 in toward the near end.",
      "Near right: slide 3 in toward the near end.",
    ]);
  });

  it("brings corners to the size that was asked for", () => {
    expect(squaringCheck(taped(199.5, 100, 0), 200, 100).sentences.slice(1)).toEqual([
      "Far left: slide 6 in toward the far end.",
      "Far right: slide 6 in toward the far end.",
    ]);
  });

  it("says how far out six measures are that do not fit, and refuses those that cannot belong together", () => {
    const off = { ...taped(200, 100, 0), measured_diagonal_1: "224" };
    expect(squaringCheck(off, 200, 100).sentences[0]).toMatch(/^The six measures are 4 3\/4 in out with one another/);
    const wrong = { ...taped(200, 100, 0), measured_diagonal_1: "290" };
    expect(squaringCheck(wrong, 200, 100).sentences).toHaveLength(1);
  });
}); // prettier-ignore
