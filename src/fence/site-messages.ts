import { feetInches } from "../units/feet-inches";

/** What the work on the ground has to say to a user: gate first, fences nearby, reference stakes and field aids. Lengths come in feet. */
export const siteMessages = {
  noGateToStartFrom: "there is no gate to start from: give the pen a gate",
  gatePlacesApart: (apart: number, gate: number) =>
    `the two places are ${feetInches(apart)} apart and the gate is ${feetInches(gate)} from post to post, ${feetInches(Math.abs(apart - gate))} too ${apart > gate ? "far" : "near"}: set them within an inch of it`,
  turningRoom: (closed: number) => `the room to turn must be over the closed gap of ${feetInches(closed)}`,
  penInsidePen: "one pen lies inside the other: wedges are looked for between pens side by side",
  fenceInside: "it lies inside the arena: wedges are looked for outside of its fence",
  referenceInWork: (least: number) =>
    `a reference stake must stand outside the work, ${feetInches(least)} or more from the center`,
  referenceAngle: (least: number, most: number) =>
    `two reference stakes must be seen from ${least} to ${most} degrees apart from the center`,
  nothingMeasured: "give the measured chord, the measured radius, or both",
  offCircle: {
    "no harm": (off: string) => `${off} on the radius does no harm.`,
    "out of place": (off: string) =>
      `${off} on the radius is more than the inch or two that do no harm: set the stake again.`,
    "out of round": (off: string) => `${off} out of round changes how horses work: set the stake again.`,
  },
  chordMissesRadius: (chord: number, radius: number) =>
    `a chord of ${feetInches(chord)} and a radius of ${feetInches(radius)} do not meet: measure them again`,
};
