import { aidQuestions, fieldAid } from "../../src/estimate/field-aids";
import { newJob, type Job } from "../../src/estimate/job";
import { penOf, type RoundPen } from "../../src/estimate/pen";
import { stakesOnGround } from "../../src/estimate/stakes-on-ground";

const round = (more: Job = {}) => penOf({ ...newJob(), ...more }) as RoundPen;

/** 50 ft across the post centers: half of it, 25 ft, is the radius. */
const posts = round({ structure: "post pen", size: 50, leaf_1: null });

describe("the field aids of a round pen", () => {
  it("say where a stake belongs before anything is taped, whatever kind of piece comes before it", () => {
    for (const pen of [posts, round()]) {
      const count = stakesOnGround(pen, 0).length;
      expect(fieldAid("stake", {}, pen).sentences).toEqual([
        expect.stringMatching(/^Stake 2 belongs .+ from stake 1 and .+ from the center\.$/),
      ]);
      expect(fieldAid("stake", { aid_stake: "1" }, pen).sentences[0]).toContain(`from stake ${count}`);
    }
  });

  it("say how far a stake is off its circle, and how much that matters", () => {
    const radius = (feet: string) => fieldAid("stake", { aid_radius: feet }, posts).sentences.slice(1);
    expect(radius("25' 2\"")).toEqual(["It stands 2 in too far out.", "2 in on the radius does no harm."]);
    expect(radius("24' 6\"")[0]).toBe("It stands 6 in too far in.");
    expect(radius("24' 6\"")[1]).toContain("set the stake again");
    expect(radius("26 ft 6 in")[1]).toContain("out of round changes how horses work");
  });

  it("say how far along the circle a stake stands, by the chord from the stake before", () => {
    const { chord } = stakesOnGround(posts, 0)[1];
    const along = (feet: number) => fieldAid("stake", { aid_chord: String(feet) }, posts).sentences[1];
    expect(along(chord + 0.5)).toMatch(/^Along the circle it stands 6 .*in too far from stake 1\.$/);
    expect(along(chord - 0.5)).toMatch(/ in too near to stake 1\.$/);
  });

  it("say what a tape along the ground reads: 25 ft level at a fall of 20 % straight down are 25.495 ft, and across it 25", () => {
    const tape = (turned: string) =>
      fieldAid("slope", { aid_fall: "20", aid_turned: turned }, posts).sentences;
    expect(tape("0")).toEqual([
      "For a level radius of 25 ft the tape along the ground reads 25 ft 5 15/16 in.",
    ]);
    expect(tape("90")).toEqual(["For a level radius of 25 ft the tape along the ground reads 25 ft."]);
  });

  it("say the radius line by hand: half of a 2 in stake and a 4 in can are 3 in, and two loops of 6 in a foot", () => {
    const line = { aid_center: "2", aid_can: "4", aid_loop: "6" };
    expect(fieldAid("line", line, posts).sentences).toEqual([
      "Pulled tight, loop to loop: 25 ft 3 in.",
      "Off the roll: 26 ft 3 in.",
    ]);
  });

  it("stay silent beside an answer that cannot be read, and keep the others", () => {
    const { sentences, problems, read } = fieldAid("stake", { aid_stake: "3", aid_chord: "eight" }, posts);
    expect(sentences).toEqual([]);
    expect(Object.keys(problems)).toEqual(["aid_chord"]);
    expect(read.aid_stake).toBe(3);
  });

  it("say which stakes there are, and refuse a chord and a radius that do not meet", () => {
    const count = stakesOnGround(posts, 0).length;
    expect(fieldAid("stake", { aid_stake: "500" }, posts).sentences).toEqual([
      `The fence has stakes 1 to ${count}.`,
    ]);
    expect(fieldAid("stake", { aid_chord: "2", aid_radius: "40" }, posts).sentences).toHaveLength(1);
  });

  it("read a blank as the default that its field shows", () => {
    for (const { key, default: usual } of aidQuestions.line)
      expect(fieldAid("line", { [key]: String(usual) }, posts).sentences).toEqual(
        fieldAid("line", {}, posts).sentences,
      );
  });
});
