import fc from "fast-check";
import { estimate } from "../../src/estimate/estimate";
import { figuresOf } from "../../src/estimate/figures";
import { newJob, type Job } from "../../src/estimate/job";
import { arenaOfPanels } from "../../src/estimate/panel-arena";
import { arenaOfPosts } from "../../src/estimate/post-arena";
import { piecesOnGround } from "../../src/estimate/pieces-on-ground";
import { examplePrices } from "../../src/estimate/prices";
import { railRuns } from "../../src/estimate/rail-runs";
import { otherSizesSentence, penSentence } from "../../src/estimate/sentences";
import { squarePost } from "../../src/fence/lumber";
import { distance } from "../../src/geometry/point";
import { Refusal } from "../../src/units/refusal";
import { randomPanelArena, randomPostArena } from "./random-job";

const panels = (changes: Partial<Job> = {}): Job =>
  ({ ...newJob(), structure: "panel arena", ...changes }) as Job;
const posts = (changes: Partial<Job> = {}): Job =>
  ({ ...newJob(), structure: "post arena", ...changes }) as Job;
const counted = (job: Job) =>
  Object.fromEntries(estimate(job, examplePrices).takeoff.map(({ key, counted }) => [key, counted]));

/** What an arena is, where its job has an answer. */
function orNone<T>(made: () => T): T | undefined {
  try {
    return made();
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

describe("an arena of panels", () => {
  it("takes the whole panels nearest to each side, and says the built size beside the one asked for", () => {
    const job = panels({ gate_1: 12, arena_width: 102 });
    const arena = arenaOfPanels(job);
    expect([arena.length, arena.width, arena.panels]).toEqual([204, 108, 51]);
    expect(penSentence(arena)).toBe(
      "51 panels of 12 ft and one 12 ft gate: 204 ft by 108 ft built, 200 ft by 102 ft asked for",
    );
    expect(otherSizesSentence(arena)).toBe(
      "One panel fewer or more on both sides: 192 ft or 216 ft long; on both ends: 96 ft or 120 ft wide",
    );
    const figures = figuresOf(job, estimate(job, examplePrices));
    expect([figures.length_over, figures.width_over, figures.panels_near, figures.panels_far]).toEqual([
      48, 72, 8, 9,
    ]);
    expect(figures.area).toBeCloseTo(204 * 108, 6);
  });

  it("names the sides that differ where a gate is no whole number of panels", () => {
    expect(penSentence(arenaOfPanels(panels({ gate_1: 10 })))).toMatch(
      /: 204 ft by 96 ft built, near end 94 ft, 200 ft by 100 ft asked for$/,
    );
  });

  it("lays sand on the built area and stakes every joint and line end", () => {
    const job = panels({ gate_1: 12 });
    const { sand, pen } = estimate(job, examplePrices);
    expect(sand.need).toBeCloseTo((pen.area * 3) / 324, 6);
    expect(counted(job).stakes).toBe(50 + 8);
    expect(counted(panels({ gate_1: 12, panel_1_use: 60 })).panel_1).toBe(60);
  });

  it("refuses gates that are longer than their side", () => {
    expect(() => arenaOfPanels(panels({ arena_width: 8, gate_1: 40 }))).toThrow(
      /gates on the near side are 40' together, longer than the side of 8'/,
    );
  });
});

describe("an arena of posts", () => {
  // Derived: G9, G10 and G11 of the table of areas, distances around and diagonals of arenas.
  const derived = [
    ["G9", 0, 20_000, 600, 223.6068],
    ["G10", 20, 19_656.637, 565.664, 223.6068],
    ["G11", 50, 17_853.982, 514.159, 223.6068],
  ] as const;

  test.each(derived)(
    "%s: 200 by 100 ft with corners of %p ft has the derived figures",
    (_row, corner_radius, area, around, diagonal) => {
      const job = posts({ corner_radius, leaf_1: null });
      const figures = figuresOf(job, estimate(job, examplePrices));
      expect(figures.area).toBeCloseTo(area, 2);
      expect(figures.distance_around).toBeCloseTo(around, 2);
      expect(figures.diagonal_1).toBeCloseTo(diagonal, 4);
    },
  );

  it("is held to three derived arenas", () => expect(derived).toHaveLength(3));

  it("keeps the size asked for in the meaning that it has, the other two beside it", () => {
    for (const meaning of ["inside clear", "post line", "outside"] as const) {
      const { sizes } = arenaOfPosts(posts({ arena_size_means: meaning, corner_radius: 20 }));
      expect(sizes[meaning].length).toBeCloseTo(200, 9);
      // A 6 in post with 1 1/2 in boards inside on both sides: 9 in less inside, 6 in more outside.
      expect(sizes["post line"].length - sizes["inside clear"].length).toBeCloseTo(9 / 12, 9);
      expect(sizes.outside.width - sizes["post line"].width).toBeCloseTo(6 / 12, 9);
    }
    expect(
      arenaOfPosts(posts({ arena_size_means: "inside clear", corner_radius: 20 })).line.cornerRadius,
    ).toBeCloseTo(20 + 4.5 / 12, 9);
  });

  it("shares the sides out in equal bays from corner to gate and counts gate posts", () => {
    const job = posts({ leaf_1: 10, gate_post: "8 in round" });
    const figures = figuresOf(job, estimate(job, examplePrices));
    // 100 ft less a gate of 11 ft leaves 44.5 ft on each side of it: 6 bays each.
    expect([figures.bays_near, figures.bays_far, figures.bays_left, figures.bays_arcs]).toEqual([
      12, 13, 25, 0,
    ]);
    expect(figures.posts).toBe(12 + 13 + 25 + 25 + 1);
    expect([counted(job).gate_posts, counted(job).line_posts]).toEqual([2, 74]);
  });

  it("runs a length of rail over several bays on the straights, and over one on a tight arc", () => {
    const line = {
      thickness: 1.5,
      rows: 4,
      post: squarePost("6x6"),
      side: "inside",
      fastenersEach: 1,
      wastePercent: 0,
    } as const;
    const runs = railRuns(arenaOfPosts(posts({ leaf_1: null, corner_radius: 20 })), line, squarePost("6x6"));
    expect(runs.map(({ runs: many, bays, radius }) => [many, bays, radius])).toEqual([
      [2, 20, undefined],
      [4, 4, 20],
      [2, 8, undefined],
    ]);
    const square = railRuns(arenaOfPosts(posts({ leaf_1: null })), line, squarePost("6x6"));
    // Inside, the side that is covered stops a board's thickness before the one that covers it.
    expect(square.map(({ reach }) => reach.map((feet) => feet * 12))).toEqual([
      [-2.75, -2.75],
      [-4.25, -4.25],
    ]);
    const rails = estimate(posts({ leaf_1: null }), examplePrices).work!.rails;
    expect(rails.cut).toBeLessThan(rails.fasteners);
    expect(penSentence(arenaOfPosts(posts()))).toMatch(
      /^76 posts, bays of up to 8 ft and one 10 ft gate: 200 ft by 100 ft through the posts, square corners, /,
    );
    expect(otherSizesSentence(arenaOfPosts(posts()))).toBe(
      "On the longest run of 25 bays, one post fewer: bays of 8 ft 4 in; one more: bays of 7 ft 8 5/16 in",
    );
  });

  it("stakes corners and arc centers beside the posts where corners are round", () => {
    const stakes = (corner_radius: number) => {
      const { stakes, line_posts, gate_posts } = counted(posts({ corner_radius, leaf_1: null }));
      return stakes! - line_posts! - gate_posts!;
    };
    expect([stakes(0), stakes(20), stakes(50)]).toEqual([8, 16, 14]);
  });

  test.each([
    [
      "a corner radius over half the width",
      { corner_radius: 51 },
      "the corner radius is at most half the shorter side, 50 ft",
    ],
    [
      "posts farther apart than a side",
      { arena_width: 15, spacing: 20, leaf_1: null },
      "posts 20 ft apart are farther than the shorter side of 15 ft: set them closer",
    ],
    [
      "a gate longer than its side",
      { arena_width: 10, leaf_1: 12 },
      "gates on the near side: one is 13' with its posts, and the straight is 10'",
    ],
    [
      "a gate where all is arc",
      { corner_radius: 50 },
      "the near side is all arc: a gate needs a straight side",
    ],
    [
      "a gate past the corner",
      { gate_at_1: 95 },
      "a gate on the near side must begin from 0\" to 89' from the corner",
    ],
  ])("refuses %s in a sentence of its own", (_what, changes, sentence) => {
    expect(() => estimate(posts(changes), examplePrices)).toThrow(sentence);
  });
});

describe("the pieces of an arena on the ground", () => {
  it("follow one another back to the first stake, whatever the bearing", () => {
    fc.assert(
      fc.property(fc.oneof(randomPanelArena, randomPostArena), fc.integer({ min: 0, max: 359 }), (job, bearing) => {
        const arena = orNone(() => (job.structure === "post arena" ? arenaOfPosts(job) : arenaOfPanels(job)));
        if (!arena) return;
        const pieces = piecesOnGround(arena, bearing);
        pieces.forEach(({ from }, k) => expect(distance(pieces.at(k - 1)!.to, from)).toBeLessThan(1e-9));
        expect(pieces.filter(({ kind }) => kind === "gate").map(({ length }) => length).sort()).toEqual([...arena.gates].sort());
      }),
      { numRuns: 40 },
    );
  });
}); // prettier-ignore
