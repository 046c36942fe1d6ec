import { radiusLine, usualLine } from "../fence/radius-line";
import { offCircle, stakeOff } from "../fence/stake-check";
import { tapedDistance } from "../geometry/slope-distance";
import { INCHES_PER_FOOT } from "../units/conversion";
import { feetInches } from "../units/feet-inches";
import { Refusal } from "../units/refusal";
import { field, type Question } from "./field";
import { circleOf, type RoundPen } from "./pen";
import { stakesOnGround } from "./stakes-on-ground";
import { readTyped, type TypedAnswers } from "./typed-answers";

const length = (key: string, en: string, es: string) =>
  field(en, es, { key, kind: "length", unit: "ft", range: [0, 500], section: "layout" });
const inches = (key: string, en: string, es: string, usual: number) =>
  field(en, es, { key, kind: "length", unit: "in", range: [0, 60], default: usual, section: "layout" });

/** What is asked for each aid. */
export const aidQuestions = {
  stake: [
    field("Stake no.", "Estaca núm.", {
      key: "aid_stake",
      kind: "count",
      range: [1, 10_000],
      default: 2,
      section: "layout",
    }),
    length("aid_chord", "Taped from the stake before", "Medido desde la estaca anterior"),
    length("aid_radius", "Taped from the center stake", "Medido desde la estaca central"),
  ],
  slope: [
    field("The ground falls", "El suelo baja", {
      key: "aid_fall",
      kind: "number",
      unit: "%",
      range: [0, 50],
      default: 2,
      section: "layout",
    }),
    field("Tape turned from downhill", "Cinta girada desde la bajada", {
      key: "aid_turned",
      kind: "number",
      unit: "°",
      range: [0, 180],
      default: 0,
      section: "layout",
    }),
  ],
  line: [
    inches("aid_center", "Center stake, thick", "Grosor de la estaca central", usualLine.centerStake),
    inches("aid_can", "Paint can, across", "Diámetro de la lata", usualLine.can),
    inches("aid_loop", "Line in each loop", "Hilo en cada lazo", usualLine.loop),
  ],
} as const satisfies Record<string, readonly Question[]>;

/** One of the aids. */
export type Aid = keyof typeof aidQuestions;

/** What was read, and what the aid says of it. */
export interface AidAnswer extends TypedAnswers {
  sentences: string[];
}

const inWords = (feet: number) => feetInches(feet, 16, "words");

/** What an aid says of a round pen for what was typed; a blank stands for its default. What cannot be read leaves it silent. */
export function fieldAid(aid: Aid, typed: Record<string, string>, pen: RoundPen): AidAnswer {
  const questions: readonly Question[] = aidQuestions[aid];
  const answers = readTyped(questions, typed);
  if (Object.keys(answers.problems).length > 0) return { ...answers, sentences: [] };
  const values = Object.fromEntries(
    questions.map(({ key, default: usual }) => [key, (answers.read[key] ?? usual) as number | null]),
  );
  try {
    return { ...answers, sentences: says[aid](values, pen) };
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    return { ...answers, sentences: [refusal.message] };
  }
}

type Values = Record<string, number | null>;

const says: Record<Aid, (values: Values, pen: RoundPen) => string[]> = {
  stake: stakeSays,
  slope: ({ aid_fall, aid_turned }, pen) => {
    const radius = circleOf(pen) / 2;
    const taped = tapedDistance(radius, aid_fall!, aid_turned!);
    return [`For a level radius of ${inWords(radius)} the tape along the ground reads ${inWords(taped)}.`];
  },
  line: ({ aid_center, aid_can, aid_loop }, pen) => {
    const [centerStake, can, loop] = [aid_center!, aid_can!, aid_loop!].map((size) => size / INCHES_PER_FOOT);
    const { tight, cut } = radiusLine({ radius: circleOf(pen) / 2, centerStake, can, loop });
    return [`Pulled tight, loop to loop: ${inWords(tight)}.`, `Off the roll: ${inWords(cut)}.`];
  },
};

function stakeSays({ aid_stake, aid_chord, aid_radius }: Values, pen: RoundPen): string[] {
  const stakes = stakesOnGround(pen, 0);
  const stake = stakes.find(({ stake }) => stake === aid_stake);
  if (!stake) return [`The fence has stakes 1 to ${stakes.length}.`];
  const radius = circleOf(pen) / 2;
  const before = aid_stake === 1 ? stakes.length : stake.stake - 1;
  const place = `Stake ${aid_stake} belongs ${inWords(stake.chord)} from stake ${before} and ${inWords(radius)} from the center.`;
  if (aid_chord === null && aid_radius === null) return [place];
  const taped = { chord: aid_chord ?? undefined, radius: aid_radius ?? undefined };
  const { outward, along } = stakeOff(radius, stake.chord, taped);
  const off = (feet: number) => inWords(Math.abs(feet));
  return [
    place,
    ...(taped.radius === undefined
      ? []
      : [`It stands ${off(outward)} too far ${outward < 0 ? "in" : "out"}.`, offCircle(outward).sentence]),
    ...(taped.chord === undefined
      ? []
      : [
          `Along the circle it stands ${off(along)} too ${along < 0 ? "near to" : "far from"} stake ${before}.`,
        ]),
  ];
}
