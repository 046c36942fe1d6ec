import { planDrawing } from "../drawing/plan";
import { offSizes } from "../estimate/off-sizes";
import { planFrame } from "../drawing/frame";
import { fieldOf, fieldsOf, languages, type Hand, type Language, type North } from "../estimate/fields";
import { byOtherOf, type ByOther } from "../estimate/by-other";
import { answerOf, structureOf, type Job } from "../estimate/job";
import { type GateOnPosts } from "../estimate/hung-gates";
import { type Pen } from "../estimate/pen";
import { piecesOnGround } from "../estimate/pieces-on-ground";
import { neighborsOf, siteFindings, type Placed } from "../estimate/site";
import { byOtherSentences, siteSentences } from "../estimate/site-sentences";
import { type Structure } from "../estimate/structures";
import { type Stake } from "../fence/layout";
import { squareReferenceStakes } from "../fence/reference-stakes";
import { bearingTo } from "../geometry/point";
import { roundUp } from "../units/rounding";
import { type Place } from "./address";
import { type GateSide, type LaidPieces, type LaidStake, type LayoutData } from "./layout-data";
import { labels, piecesInWords } from "./layout-messages";
import { type UsedInput } from "./used-inputs";

/** What the caller of a layout sheet knows beside the job. */
export interface LayoutIssue {
  revision: number;
  date: string;
  /** The estimate's sheet and where its keyed cells stand; the sheet then says when they part from what it used. */
  estimate?: { name: string; cells: Record<string, Place> };
}

/** Reference stakes stand so far outside the pins: 10 ft, or a fifth of the radius (common practice, no source). */
export const outside = (radius: number) => Math.max(10, radius / 5);

/** How wide the plan is drawn, pixels, and points in a pixel. */
export const drawn = 460;
export const points = 0.75;

/** What a job says of its layout sheet. */
export interface Asked {
  language: Language;
  bearing: number;
  north: North;
  hand: Hand;
}

/** The answers of a job that a layout sheet is written by. */
export const askedOf = (job: Job): Asked => ({
  language: languages[job.language as keyof typeof languages] ?? "en",
  bearing: Number(job.gate_bearing ?? 0),
  north: (job.north ?? fieldOf("north").default) as North,
  hand: (job.gate_hand ?? fieldOf("gate_hand").default) as Hand,
});

/** The gates of a pen, like ones together. */
export const gatesAlike = (gates: readonly number[]): LaidPieces[] =>
  [...new Set(gates)].map((length) => ({
    what: "gate",
    length,
    count: gates.filter((gate) => gate === length).length,
  }));

/** The same of gates hung on posts, with what passes through them. */
export const hungAlike = (gates: readonly GateOnPosts[]): LaidPieces[] =>
  gates.reduce<LaidPieces[]>((alike, { leaf: length, leaves, opening }) => {
    const same = alike.find((one) => one.length === length && one.opening === opening);
    if (same) same.count++;
    else alike.push({ what: "gate", length, count: 1, leaves, opening });
    return alike;
  }, []);

/** What the layout sheets of all pens have in common: language, title, north, reference stakes, the plan and what was found. */
export function headOf(
  job: Job,
  pen: Pen,
  radius: number,
  { bearing, center, over }: Placed<Stake>,
  pieces: LayoutData["pieces"],
): Pick<
  LayoutData,
  "language" | "title" | "north" | "hasGate" | "references" | "center" | "over" | "notes" | "plan"
> {
  const { language, north } = askedOf(job);
  const references = referencesOf(radius, bearing);
  const found = siteFindings(job, pen, bearing);
  const site = { findings: found, neighbors: neighborsOf(job) };
  const byOther = byOtherOf(job, pen);
  return {
    language,
    title: [job.job_name, job.site].filter(Boolean).join("   "),
    north,
    hasGate: pen.gates.length > 0,
    references,
    center,
    over,
    notes: [
      ...byOtherSentences(job, pen, language),
      ...siteSentences(found, answerOf(job, "turning_room"), language),
    ],
    plan: {
      width: drawn * points,
      height: Math.round(planFrame(drawn).height * points),
      svg: planDrawing(pen, {
        width: drawn,
        bearing,
        north,
        numbered: true,
        references,
        site,
        byOther,
        off: offSizes(job, pen),
        language,
      }),
      description: pieces.map((piece) => piecesInWords(piece, language)).join(", "),
    },
  };
}

function referencesOf(radius: number, bearing: number): LayoutData["references"] {
  const off = roundUp(radius + outside(radius)) - radius;
  const { stakes, distances } = squareReferenceStakes({ east: 0, north: 0 }, radius, off, bearing + 90);
  const [a, b] = stakes.map((stake, k) => ({
    name: "AB"[k],
    turn: 90 * (k + 1),
    bearing: bearingTo({ east: 0, north: 0 }, stake),
    distance: distances[k],
  }));
  return [a, b];
}

/** What stands at each stake. Walked clockwise, a gate begins at the right of who faces the pen from outside; one of two leaves has hinges at both ends. */
export function withSides(
  stakes: readonly Stake[],
  pen: Pen,
  hand: Hand,
  stands: "pin" | "post",
  byOther?: ByOther,
): LaidStake[] {
  const pieces = piecesOnGround(pen, 0);
  const ofHand: [GateSide, GateSide] = hand === "right" ? ["hinge", "latch"] : ["latch", "hinge"];
  const sides = pieces.map(({ kind, hung }): GateSide[] =>
    kind !== "gate" ? [] : hung?.leaves === 2 ? ["hinge", "hinge"] : ofHand,
  );
  return stakes.map(({ atGate, ...stake }, k) => ({
    ...stake,
    ...(byOther?.stakes[k] && { byOther: true }),
    kind: atGate ? (`gate ${stands}` as const) : stands,
    sides: [...sides.at(k - 1)!.slice(1), ...sides[k].slice(0, 1)],
  }));
}

/** The inputs that the plan and the notes rest on beside the fence's own. */
const siteKeys = (structure: Structure) =>
  fieldsOf(structure)
    .filter(
      ({ key, section }) =>
        section === "site" || /^(gate_hand|gate_swing|gates_by_other|fence_by_other)$/.test(key),
    )
    .map(({ key }) => key);

/** How an estimate's cells stand behind the inputs of a layout: where each is now, and an input of its list of fields. */
export function inputsOn(estimate: LayoutIssue["estimate"]) {
  const now = (key: string): Pick<UsedInput, "now"> =>
    estimate && key in estimate.cells
      ? { now: { sheet: estimate.name, row: estimate.cells[key].row, column: estimate.cells[key].column } }
      : {};
  const input = (key: string, value: UsedInput["value"]): UsedInput => ({
    label: fieldOf(key).label,
    value,
    ...now(key),
  });
  /** Of a job whose gate comes first the bearing follows from its posts, which are inputs then. */
  const bearing = ({ bearing: value, center }: Placed<Stake>): UsedInput =>
    center ? { label: labels.bearing, value } : input("gate_bearing", value);
  /** What else a plan shows and its notes say: how gates hang, where the first one is, and what is near. */
  const around = (job: Job): UsedInput[] =>
    siteKeys(structureOf(job)).map((key) =>
      input(key, fieldOf(key).kind === "length" ? Number(job[key] ?? 0) : (job[key] ?? "")),
    );
  return { now, input, bearing, around };
}
