import fc from "fast-check";
import { newJob } from "../../src/estimate/job";
import { readSizes, sizesOffered } from "../../src/estimate/sizes-asked";

const pen = newJob();
const arena = { ...newJob(), structure: "post arena" };
const answers = (typed: string, job = pen) => readSizes(typed, job).map((one) => one.answers);

describe("sizes to compare", () => {
  it("are read in any notation, separated by commas, semicolons or lines", () => {
    expect(answers("50, 60 ft; 65' 6\"\n20 m")).toEqual([
      { size: 50 },
      { size: 60 },
      { size: 65.5 },
      { size: 20 / 0.3048 },
    ]);
  });

  it("of an arena are length by width", () => {
    expect(answers("200 x 100, 150' by 75', 40 m × 20 m", arena)).toEqual([
      { arena_length: 200, arena_width: 100 },
      { arena_length: 150, arena_width: 75 },
      { arena_length: 40 / 0.3048, arena_width: 20 / 0.3048 },
    ]);
    expect(readSizes("200x100, 150x75, 90x60", arena)[0].label).toBe("200 ft x 100 ft");
  });

  it.each([
    ["50, 60", pen, "Write 3 to 8 sizes, separated by commas."],
    ["", pen, "Write 3 to 8 sizes, separated by commas."],
    ["1,2,3,4,5,6,7,8,9", pen, "Write 3 to 8 sizes, separated by commas."],
    ["50, 60, 50 ft", pen, "50 ft is there twice."],
    ["50, 60, 70000", pen, /^70000: /],
    ["50, 60, wide", pen, /^wide: /],
    ["200, 150 x 75, 90 x 60", arena, "200: write length by width, such as 200 x 100."],
    ["200 x, 150 x 75, 90 x 60", arena, "200 x: write length by width, such as 200 x 100."],
  ])("are refused in a sentence: %s", (typed, job, sentence) => {
    expect(() => readSizes(typed, job)).toThrow(sentence);
  });

  it("are offered around the job's own, and can be read back", () => {
    expect(sizesOffered(pen)).toBe("53, 59, 66, 73, 79");
    fc.assert(
      fc.property(fc.integer({ min: 16, max: 500 }), (size) => {
        const offered = answers(sizesOffered({ ...pen, size }));
        expect(offered).toContainEqual({ size });
        expect(offered.length).toBeGreaterThanOrEqual(3);
      }),
    );
    expect(answers(sizesOffered(arena), arena)).toContainEqual({ arena_length: 200, arena_width: 100 });
  });
});
