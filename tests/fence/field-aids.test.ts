import fc from "fast-check";
import { postLayout } from "../../src/fence/post-layout";
import { radiusLine } from "../../src/fence/radius-line";
import { centerAgain, referenceStakes, squareReferenceStakes } from "../../src/fence/reference-stakes";
import { offCircle, runningDistances, stakeOff, tiesFrom } from "../../src/fence/stake-check";
import { distance } from "../../src/geometry/point";

const center = { east: 12, north: -7 };
const pen = postLayout({ diameter: 60, spacing: 8, gates: [12], gatePost: 0 }, 25);

describe("A radius line", () => {
  it("is longer than the radius by half the center stake and half the can, and takes two loops more off the coil", () => {
    // A 2 in stake and a 2 1/2 in can on a 30 ft radius: 30 ft and 2 1/4 in, by hand.
    const line = radiusLine({ radius: 30, centerStake: 2 / 12, can: 2.5 / 12, loop: 1.5 });
    expect(line.tight).toBeCloseTo(30 + 2.25 / 12, 12);
    expect(line.cut).toBeCloseTo(33 + 2.25 / 12, 12);
    expect(radiusLine({ radius: 30, centerStake: 0, can: 0, loop: 0 })).toEqual({ tight: 30, cut: 30 });
  });
});

describe("Reference stakes", () => {
  it("stand at right angles outside the work by the plain choice, with the bearings back to the center", () => {
    const { stakes, distances, bearings, apart } = squareReferenceStakes(center, 33, 7, 350);
    expect(distances).toEqual([40, 40]);
    expect(bearings).toEqual([expect.closeTo(170, 9), expect.closeTo(260, 9)]);
    expect(apart).toBeCloseTo(40 * Math.SQRT2, 9);
    for (const stake of stakes) expect(distance(stake, center)).toBeCloseTo(40, 9);
  });

  it("set the center again from two tapes, wherever they stand, and say how far a tape that slipped moves it", () => {
    const far = fc.double({ min: 40, max: 200, noNaN: true });
    const bearings = fc.double({ min: -360, max: 360, noNaN: true });
    const crossing = fc.double({ min: 31, max: 149, noNaN: true });
    fc.assert(
      fc.property(
        bearings,
        crossing,
        fc.constantFrom(1, -1),
        far,
        far,
        (bearing, turn, way, near1, near2) => {
          const first = { bearing, distance: near1 };
          const second = { bearing: bearing + way * turn, distance: near2 };
          const reference = referenceStakes(center, 40, [first, second]);
          expect(centerAgain(reference, ...reference.distances).off).toBeLessThan(1e-8);
          const slipped = centerAgain(reference, reference.distances[0] + 0.1, reference.distances[1]);
          expect(slipped.off).toBeGreaterThanOrEqual(0.099);
          expect(slipped.off).toBeLessThan(0.21);
        },
      ),
    );
  });

  it("are refused within the work, too nearly in line, and where the tapes do not meet", () => {
    const at = (bearing: number, distance = 50) => ({ bearing, distance });
    expect(() => referenceStakes(center, 40, [at(0), at(90, 39)])).toThrow(
      "a reference stake must stand outside the work, 40' or more from the center",
    );
    for (const bearing of [0, 29, 151, 180, 340])
      expect(() => referenceStakes(center, 40, [at(0), at(bearing)])).toThrow(
        "two reference stakes must be seen from 30 to 150 degrees apart from the center",
      );
    const reference = referenceStakes(center, 40, [at(0), at(90)]);
    expect(() => centerAgain(reference, 20, 20)).toThrow(/^these two distances do not meet from stakes/);
  });
});

describe("A stake that was taped", () => {
  it("is not off where chord and radius are as planned", () => {
    const found = stakeOff(30, 8, { chord: 8, radius: 30 });
    expect([found.outward, found.along]).toEqual([expect.closeTo(0, 12), expect.closeTo(0, 12)]);
    expect(stakeOff(30, 8, { radius: 30.25 })).toEqual({ outward: 0.25, along: 0 });
  });

  it("is as far off as it was moved, in and out and along", () => {
    const shift = fc.double({ min: -2, max: 2, noNaN: true });
    const radius = fc.double({ min: 10, max: 150, noNaN: true });
    fc.assert(
      fc.property(radius, shift, shift, (radius, outward, along) => {
        const chord = 8;
        const angle = 2 * Math.asin(chord / (2 * radius)) + along / radius;
        const stands = [(radius + outward) * Math.sin(angle), (radius + outward) * Math.cos(angle) - radius];
        const found = stakeOff(radius, chord, { chord: Math.hypot(...stands), radius: radius + outward });
        expect(found.outward).toBeCloseTo(outward, 9);
        expect(found.along).toBeCloseTo(along, 6);
      }),
    );
  });

  it("is off along the circle by nearly what the chord alone is over", () => {
    expect(stakeOff(30, 8, { chord: 8.1 })).toMatchObject({ outward: 0, along: expect.closeTo(0.1009, 4) });
  });

  const facts = [
    // Facts of the trade: common practice, no source.
    { inches: 1, matter: "no harm", says: "1 in on the radius does no harm." },
    { inches: 2, matter: "no harm", says: "2 in on the radius does no harm." },
    {
      inches: 12,
      matter: "out of round",
      says: "1 ft out of round changes how horses work: set the stake again.",
    },
    {
      inches: 24,
      matter: "out of round",
      says: "2 ft out of round changes how horses work: set the stake again.",
    },
  ] as const;

  test.each(facts)(
    "by $inches in: $matter, in or out (common practice, no source)",
    ({ inches, matter, says }) => {
      for (const outward of [inches / 12, -inches / 12])
        expect(offCircle(outward)).toEqual({ matter, sentence: says });
      const { outward } = stakeOff(30, 8, { radius: 30 + inches / 12 });
      expect(offCircle(outward).matter).toBe(matter);
    },
  );

  it("is held to four facts, and between them is out of place", () => {
    expect(facts).toHaveLength(4);
    expect(offCircle(0).matter).toBe("no harm");
    for (const inches of [2.1, 6, 11.9]) expect(offCircle(inches / 12).matter).toBe("out of place");
    expect(offCircle(0.25).sentence).toMatch(/^3 in on the radius is more than the inch or two/);
  });

  it("is refused with nothing taped, or with tapes that do not meet", () => {
    expect(() => stakeOff(30, 8, {})).toThrow("give the measured chord, the measured radius, or both");
    expect(() => stakeOff(30, 8, { chord: 2, radius: 33 })).toThrow(
      "a chord of 2' and a radius of 33' do not meet: measure them again",
    );
    expect(() => stakeOff(30, 8, { chord: 61 })).toThrow(/^a chord of 61' and a radius of 30' do not meet/);
  });
});

describe("Distances to a stake", () => {
  it("run from stake 1 around to stake 1", () => {
    const running = runningDistances(pen);
    expect(running.slice(0, 2)).toEqual([0, pen[1].chord]);
    expect(running).toHaveLength(pen.length + 1);
    expect(running.at(-1)).toBeCloseTo(
      pen.reduce((sum, { chord }) => sum + chord, 0),
      9,
    );
    running.slice(1, -1).forEach((at, i) => expect(at - running[i]).toBeCloseTo(pen[i + 1].chord, 9));
  });

  it("are tied to the posts of any gate, and from stakes 1 and 2 they are the layout's own ties", () => {
    tiesFrom(pen, 1, 2).forEach(([tie1, tie2], i) => {
      expect([tie1, tie2]).toEqual([expect.closeTo(pen[i].tie1, 9), expect.closeTo(pen[i].tie2, 9)]);
    });
    const [, , third] = tiesFrom(pen, 3, 4);
    expect(third).toEqual([0, expect.closeTo(pen[3].chord, 9)]);
  });
});
