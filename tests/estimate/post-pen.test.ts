import fc from "fast-check";
import { estimate } from "../../src/estimate/estimate";
import { newJob, type Job } from "../../src/estimate/job";
import { isPosted } from "../../src/estimate/pen";
import { postPen } from "../../src/estimate/post-pen";
import {
  kickSentence,
  postCautions,
  railHeightsSentence,
  railsSentence,
  settingSentence,
  trapCaution,
} from "../../src/estimate/post-sentences";
import { examplePrices } from "../../src/estimate/prices";
import { otherSizesSentence, penSentence } from "../../src/estimate/sentences";
import { postLayout } from "../../src/fence/post-layout";
import { randomPostJob } from "./random-job";

const jobOf = (changes: Partial<Job>): Job => ({ ...newJob(), structure: "post pen", ...changes }) as Job;
const made = (changes: Partial<Job> = {}) => estimate(jobOf(changes), examplePrices);
const counted = (changes: Partial<Job>) =>
  Object.fromEntries(made(changes).takeoff.map(({ key, counted }) => [key, counted]));

describe("a pen of posts", () => {
  it("has the posts, the distance around and the area of its stakes as they are laid out", () => {
    fc.assert(
      fc.property(randomPostJob, (job) => {
        const pen = postPen(job);
        const stakes = postLayout({ diameter: pen.postCircle, spacing: job.spacing as number, gates: pen.gateChords, gatePost: 0 }, 0);
        const next = (k: number) => stakes[(k + 1) % stakes.length];
        const area = stakes.reduce((sum, one, k) => sum + (next(k).east * one.north - one.east * next(k).north) / 2, 0);
        expect(pen.posts).toBe(stakes.length);
        expect(pen.distanceAround).toBeCloseTo(stakes.reduce((sum, { chord }) => sum + chord, 0), 6);
        expect(pen.area).toBeCloseTo(area, 6);
        expect(pen.insideClear).toBeLessThan(pen.postCircle);
        expect(pen.outside).toBeGreaterThan(pen.postCircle);
      }),
      { numRuns: 60 },
    );
  }); // prettier-ignore

  it("keeps the size asked for in the meaning that it has", () => {
    expect(postPen(jobOf({ post_size_means: "inside clear" })).insideClear).toBeGreaterThanOrEqual(66 - 1e-9);
    expect(postPen(jobOf({ post_size_means: "outside" })).outside).toBeLessThanOrEqual(66 + 1e-9);
    expect(postPen(jobOf({})).postCircle).toBe(66);
  });

  it("gives a post fewer longer bays and a post more shorter ones, each closing the same circle", () => {
    const { bays, bay, oneFewer, oneMore } = postPen(jobOf({ leaf_1: null }));
    expect(bays).toBe(26);
    expect(bay).toBeCloseTo(66 * Math.sin(Math.PI / 26), 12);
    expect(oneFewer).toBeCloseTo(66 * Math.sin(Math.PI / 25), 12);
    expect(oneMore).toBeCloseTo(66 * Math.sin(Math.PI / 27), 12);
    expect(postPen(jobOf({ leaf_1: null, size: 8, spacing: 8 })).oneFewer).toBeNull();
  });

  it("takes holes, concrete and stone by the post, as figured by hand", () => {
    // A 6 in post in a 10 in hole, 30 in deep: pi/4 (100 - 36) 30 / 1728 cu ft; 26 of them in bags of 0.6 cu ft.
    const concrete = counted({ leaf_1: null, setting: "concrete", hole_gravel: 0 });
    expect(concrete.bags).toBe(Math.ceil(((Math.PI / 4) * 64 * 30 * 26) / 1728 / 0.6));
    expect([concrete.holes, concrete.line_posts, concrete.gate_posts, concrete.stone]).toEqual([
      26, 26, 0, 0,
    ]);
    const stone = counted({ leaf_1: null, setting: "crushed stone", hole_gravel: 6 });
    expect(stone.stone).toBeCloseTo(((Math.PI / 4) * (64 * 30 + 100 * 6) * 26) / 1728 / 27, 9);
    expect(stone.bags).toBeNull();
    const driven = made({ setting: "driven" });
    expect(driven.takeoff.find(({ key }) => key === "holes")).toMatchObject({ item: "drive", counted: 26 });
    expect(driven.takeoff.find(({ key }) => key === "stone")!.counted).toBeNull();
  });

  it("takes a 4x6 post by its actual sides, its hole by the diagonal (H6, American Softwood Lumber Standard PS 20)", () => {
    // 3.5 by 5.5 in is 6.52 in across; with two inches all round 10.52, so a 12 in auger. 30 in deep, 26 of them.
    const job = { leaf_1: null, setting: "concrete", hole_gravel: 0, line_post: "4x6" };
    expect(counted(job).bags).toBe(Math.ceil(((36 * Math.PI - 3.5 * 5.5) * 30 * 26) / 1728 / 0.6));
    expect(postPen(jobOf({ ...job, rail_side: "outside" })).insideClear).toBeLessThanOrEqual(66 - 5.5 / 12);
    expect(made(job).takeoff.find(({ key }) => key === "line_posts")!.item).toBe("post 4x6");
  });

  it("cuts rails bay by bay, with the waste on top, and counts fasteners where they cross posts", () => {
    // 26 bays of just under 8 ft in 4 rows, two to a length of 16 ft; 104 pieces with two ends each.
    const rails = counted({ leaf_1: null, rail_waste: 0, rail_length: 16 });
    expect([rails.rails, rails.fasteners]).toEqual([52, 2 * 104 * 2]);
    expect(counted({ leaf_1: null, rail_waste: 10, rail_length: 16 }).rails).toBe(58);
    expect(() => made({ rail_length: 6 })).toThrow(/does not reach over a bay/);
  });

  it("asks the price of screws, of nails or of bolts, and takes so many at each crossing", () => {
    const item = (fastener: string) =>
      made({ fastener })
        .lines.find(({ key }) => key === "fasteners")!
        .price!.toNumber();
    const priceOf = (kind: string) => examplePrices.find((row) => row.item === kind)!.price;
    expect(["screws", "nails", "bolts"].map(item)).toEqual(["fastener", "nail", "bolt"].map(priceOf));
    const each = (fasteners_each: number) => counted({ fasteners_each }).fasteners!;
    expect(each(3)).toBe(1.5 * each(2));
  });

  it("lays a kick board from post to post at the foot, cut, bought, nailed and paid for like a row of rails", () => {
    // 26 bays of just under 8 ft, each from a length of 8 ft; 26 pieces with two ends each.
    const none = { leaf_1: null, rail_waste: 0, fasteners_each: 2, hours_rail: 0.125 };
    const before = counted(none);
    const with10 = counted({ ...none, kick_board: "2x10" });
    expect([before.kick, with10.kick]).toEqual([null, 26]);
    expect(with10.fasteners! - before.fasteners!).toBe(2 * 26 * 2);
    expect(counted({ ...none, kick_board: "2x10", rail_waste: 10 }).kick).toBe(29);
    expect(counted({ ...none, kick_board: "2x10", kick_use: 9 }).kick).toBe(9);
    expect(with10.rails).toBe(before.rails);
    const { work, takeoff } = made({ ...none, kick_board: "2x10" });
    expect(takeoff.find(({ key }) => key === "kick")).toMatchObject({ item: "kick 2x10", size: work!.kick!.stock });
    expect(with10.labor! - before.labor!).toBeCloseTo(26 * 8 * 0.125, 9);
  }); // prettier-ignore

  it("opens its gates for the kick board too, and stops it at square corners of an arena", () => {
    const boards = (structure: string) => {
      const { work } = made({ structure, kick_board: "2x12", rail_side: "inside" });
      return [work!.kick!, work!.rails].map(({ runs }) => runs.map(({ length }) => length));
    };
    for (const structure of ["post pen", "post arena"]) {
      const [kick, rails] = boards(structure);
      expect(kick).toEqual(rails);
    }
  });

  it("sets the user's own counts in the place of its own, and lets holes follow the posts", () => {
    const own = counted({ line_posts_use: 30, rails_use: 7, fasteners_use: 0 });
    expect([own.line_posts, own.gate_posts, own.holes, own.rails, own.fasteners]).toEqual([30, 2, 32, 7, 0]);
  });

  it("buys posts that reach from the foot of the hole to the top, deeper where the frost asks for it", () => {
    expect(made().work).toMatchObject({ depth: 2.5, length: 7.5, bought: 8, frostGoverns: false });
    expect(made({ frost: 42 }).work).toMatchObject({
      depth: 3.5,
      length: 8.5,
      bought: 9,
      frostGoverns: true,
    });
    expect(made({ depth_rule: "ASTM F567" }).work!.depth).toBeCloseTo(27 / 12, 12);
    expect(() => made({ depth_rule: "building code" })).toThrow(/side push/);
  });

  it("has no panel among its lines, and a panel pen no post", () => {
    const keys = (job: Job) => estimate(job, examplePrices).takeoff.map(({ key }) => key);
    expect(keys(jobOf({})).some((key) => /^(panel|gate_\d)/.test(key))).toBe(false);
    expect(keys(newJob()).some((key) => /post|rail|leaf|hole/.test(key))).toBe(false);
    expect(isPosted(estimate(newJob(), examplePrices).pen)).toBe(false);
  });
});

describe("posts in a builder's words", () => {
  it("says posts, bays, gates and the three sizes, and what a post fewer or more makes of the bays", () => {
    const { pen } = made({ leaf_2: 4 });
    expect(penSentence(pen)).toBe(
      "26 posts, bays of 7 ft 11 7/16 in, one 10 ft gate and one 4 ft gate: 66 ft across the posts, 64 ft 9 1/4 in clear inside, 66 ft 6 in outside",
    );
    expect(penSentence(made({ leaf_1: null }).pen)).toMatch(/^26 posts, bays of 7 ft 11 7\/16 in, no gate: /);
    expect(otherSizesSentence(pen)).toMatch(
      /^One post fewer: bays of 8 ft .* in; one more: bays of 7 ft .* in$/,
    );
  });

  it("says how posts are set and what decides the rails", () => {
    const { work } = made();
    expect(settingSentence(jobOf({}), work!)).toBe(
      "Posts of 8 ft, 2 ft 6 in deep, in 10 in holes, 12 in at the gates. Local code and frost come first.",
    );
    const driven = { setting: "driven", frost: 36 };
    expect(settingSentence(jobOf(driven), made(driven).work!)).toBe(
      "Posts of 8 ft, 3 ft deep for the frost, driven. Local code and frost come first.",
    );
    expect(railsSentence(jobOf({}), work!)).toMatch(
      /^Rails: 50 lengths of 2x6 board, 16 ft\. One bay a piece: /,
    );
  });

  it("says the kick board, and stands the rails over it: a 2x10 is 9 1/4 in high (American Softwood Lumber Standard PS 20)", () => {
    const kick = { kick_board: "2x10", rail_under: 8, rail_rows: 3 };
    expect(railHeightsSentence(jobOf(kick))).toBe(
      "Kick board 2x10 at the ground on the inside, 9 1/4 in high. Middles of the rails above the ground: 20 in, 38 5/8 in, 57 1/4 in; 13 1/8 in open between them.",
    );
    expect(railHeightsSentence(jobOf(kick), "es")).toMatch(/^Tabla al pie 2x10 en el suelo, por dentro, 9 1\/4" de alto\. Centros/);
    expect(kickSentence(jobOf(kick), made(kick).work!)).toBe("Kick board 2x10: 13 lengths of 16 ft.");
    expect(kickSentence(jobOf({}), made().work!)).toBe("");
  }); // prettier-ignore

  it("warns of an opening that can catch a hoof, above the kick board and between rails", () => {
    // Extension fence bulletins: at most 3 in, or the bottom rail 8 to 12 in up.
    const traps = (of: Job) => postCautions(jobOf(of), made(of).work!).filter((one) => /hoof/.test(one));
    expect(traps({})).toEqual([]);
    expect(traps({ rail_under: 8 })).toEqual([]);
    expect(traps({ rail_under: 3 })).toEqual([]);
    expect(traps({ rail_under: 5 })).toEqual([expect.stringMatching(/^Open by 5 in: .*hoof/)]);
    expect(traps({ kick_board: "2x12", rail_rows: 3, rail_under: 4 })).toHaveLength(1);
    expect(traps({ rail_rows: 5 })).toEqual([expect.stringMatching(/^Open by 5 5\/8 in/)]);
    expect(trapCaution(jobOf({ rail_under: 5 }), "es")).toMatch(/^Abierto 5": .*casco/);
  });

  it("says how high the rails stand, in both languages, and why where they do not fit", () => {
    expect(railHeightsSentence(jobOf({}))).toBe(
      "Middles of the rails above the ground: 12 3/4 in, 27 5/8 in, 42 3/8 in, 57 1/4 in; 9 3/8 in open between them.",
    );
    expect(railHeightsSentence(jobOf({ rail_rows: 1 }), "es")).toBe(
      'El centro del travesaño va a 57 1/4" del suelo.',
    );
    expect(railHeightsSentence(jobOf({ rail_rows: 10 }))).toMatch(/^10 rows of 5\.5 in, .* higher posts\.$/);
  });

  it("warns of a gate post that is light for the widest leaf, and of a depth that is for screening only", () => {
    const said = (changes: Partial<Job>) => postCautions(jobOf(changes), made(changes).work!);
    expect(said({})).toEqual([]);
    expect(said({ gate_post: "4 in round" })[0]).toMatch(/4 in post is marginal for a leaf of 10 ft/);
    expect(said({ gate_post: "4 in round", leaf_1: null })).toEqual([]);
    expect(said({ depth_rule: "building code", side_push: 200 })[0]).toMatch(/screening figure/);
  });
});
