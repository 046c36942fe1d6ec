import { notAllowed } from "../units/refusal";
import { EPSILON } from "../units/rounding";
import { centralAngle } from "./cyclic-polygon";
import { messages } from "./messages";

/** A piece of a circle. Angles in degrees, all else in the unit of the radius. */
export interface Arc {
  radius: number;
  /** Of the whole piece, at the center. */
  angle: number;
  arc: number;
  chord: number;
  /** From the middle of the chord to the arc. */
  sagitta: number;
  /** From the tangent at one end to the chord: half the angle. */
  deflection: number;
}

/** The lesser arc over a chord. Refuses a chord longer than the diameter. */
export function arcOverChord(chord: number, radius: number): Arc {
  if (chord > 2 * radius * (1 + EPSILON)) throw notAllowed(messages.chordOverDiameter(2 * radius));
  return { ...arcOfAngle(centralAngle(chord, 2 * radius), radius), chord };
}

/** The arc of a length measured along it, a full turn at most: a longer one is refused. */
export function arcOfLength(arc: number, radius: number): Arc {
  if (arc > 2 * Math.PI * radius * (1 + EPSILON))
    throw notAllowed(messages.arcOverTurn(2 * Math.PI * radius));
  return { ...arcOfAngle(arc / radius, radius), arc };
}

function arcOfAngle(radians: number, radius: number): Arc {
  const angle = (radians * 180) / Math.PI;
  return {
    radius,
    angle,
    arc: radius * radians,
    chord: 2 * radius * Math.sin(radians / 2),
    sagitta: 2 * radius * Math.sin(radians / 4) ** 2,
    deflection: angle / 2,
  };
}

/** The radius, ft, of a curve of so many degrees by the arc definition: the angle that 100 ft of arc take. */
export const curveRadius = (degrees: number) => 18_000 / (Math.PI * degrees);

/**
 * A curve set out from its tangent point: after each of so many equal bays, the arc to there, the deflection from the
 * tangent and the chord straight from the tangent point. Turn in degrees, over 0 to 360.
 */
export function curveTable(radius: number, turn: number, bays: number): Arc[] {
  const whole = (turn * Math.PI) / 180;
  return Array.from({ length: bays }, (_, i) => arcOfAngle((whole * (i + 1)) / bays, radius));
}
