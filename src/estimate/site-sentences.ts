import { type Wedge } from "../fence/wedges";
import { feetInches } from "../units/feet-inches";
import { degrees } from "../units/number-text";
import { type Language } from "./fields";
import { runsByOther } from "./by-other";
import { numbersOf, type Job } from "./job";
import { isPosted, type Pen } from "./pen";
import { type Findings } from "./site-findings";

interface Words {
  wedge(neighbor: number, wedge: Wedge, room: number): string;
  own(gate: number, at: number): string;
  struck(gate: number, neighbor: number, at: number): string;
  gates(gate: number, other: number): string;
  unclear(neighbor: number, why: string): string;
}

const size = (feet: number) => feetInches(feet, 4);

const words: Record<Language, Words> = {
  en: {
    wedge: (neighbor, { passage, narrowest, first }, room) =>
      passage
        ? `The passage along fence nearby #${neighbor} narrows to ${size(narrowest)}: a horse needs ${size(room)} to turn. Close both its ends with a panel, or move the work.`
        : `A wedge of ${size(first.length)} at fence nearby #${neighbor} is too narrow for a horse to turn in (under ${size(room)}). Close it off at its wide end, or move the work.`,
    own: (gate, at) =>
      `The leaf of gate ${gate} strikes its own fence when ${degrees(at)} open: swing it the other way, or take a shorter leaf.`,
    struck: (gate, neighbor, at) =>
      `The leaf of gate ${gate} strikes fence nearby #${neighbor} when ${degrees(at)} open: swing it the other way, hang it on the other side, or turn the gate.`,
    gates: (gate, other) =>
      `The leaves of gates ${gate} and ${other} can strike one another: hang one on its other side.`,
    unclear: (neighbor, why) => `Fence nearby #${neighbor}: ${why}.`,
  },
  es: {
    wedge: (neighbor, { passage, narrowest, first }, room) =>
      passage
        ? `El paso junto a la cerca vecina #${neighbor} se cierra a ${size(narrowest)}: un caballo necesita ${size(room)} para girar. Cierre los dos extremos con un panel o mueva la obra.`
        : `Una cuña de ${size(first.length)} junto a la cerca vecina #${neighbor} es muy angosta para que un caballo gire (menos de ${size(room)}). Ciérrela por el lado ancho o mueva la obra.`,
    own: (gate, at) =>
      `La hoja de la puerta ${gate} pega en su propia cerca a ${degrees(at)}: que abra al otro lado, o una hoja más corta.`,
    struck: (gate, neighbor, at) =>
      `La hoja de la puerta ${gate} pega en la cerca vecina #${neighbor} a ${degrees(at)}: que abra al otro lado, con bisagras del otro lado, o gire la puerta.`,
    gates: (gate, other) =>
      `Las hojas de las puertas ${gate} y ${other} pueden chocar: cambie las bisagras de una.`,
    unclear: (neighbor) => `Cerca vecina #${neighbor}: un corral está dentro del otro.`,
  },
};

interface Theirs {
  gate(gate: number, length: string): string;
  run(from: number, to: number, pieces: number, posts: boolean): string;
}

const theirs: Record<Language, Theirs> = {
  en: {
    gate: (gate, length) => `Gate ${gate} of the estimate, ${length}, and its posts are by other.`,
    run: (from, to, pieces, posts) =>
      `The fence from stake ${from} to stake ${to}, ${pieces} ${posts ? "bay" : "panel"}${pieces === 1 ? "" : "s"}, is by other${posts ? ", with the posts at both ends" : ""}.`,
  },
  es: {
    gate: (gate, length) => `La puerta ${gate} del presupuesto, ${length}, va por otro, con sus postes.`,
    run: (from, to, pieces, posts) =>
      `La cerca de la estaca ${from} a la ${to}, ${pieces} ${posts ? "vano" : "panel"}${pieces === 1 ? "" : posts ? "s" : "es"}, va por otro${posts ? ", con los postes de los dos extremos" : ""}.`,
  },
};

/** What of a job's fence is by other, a sentence each; numbers of gates that it has not are passed over. Refuses as byOtherOf does. */
export function byOtherSentences(job: Job, pen: Pen, language: Language = "en"): string[] {
  const say = theirs[language];
  const gates = numbersOf(job, "gates_by_other").flatMap((gate) => {
    const length = job[`${isPosted(pen) ? "leaf" : "gate"}_${gate}`] as number | null;
    return length === null ? [] : [say.gate(gate, feetInches(length))];
  });
  const runs = runsByOther(job, pen).map(({ from, to, fence }) => say.run(from, to, fence, isPosted(pen)));
  return [...gates, ...runs];
}

const offGate: Record<
  Language,
  { fits: string; far: (off: string) => string; near: (off: string) => string }
> = {
  en: {
    fits: "The two places are the gate's width apart.",
    far: (off) =>
      `The two places are ${off} farther apart than the gate is wide: half of it lies at each end.`,
    near: (off) => `The two places are ${off} nearer than the gate is wide: half of it lies at each end.`,
  },
  es: {
    fits: "Los dos lugares están a lo ancho de la puerta.",
    far: (off) => `Los dos lugares están ${off} más separados que la puerta: la mitad queda en cada extremo.`,
    near: (off) => `Los dos lugares están ${off} más juntos que la puerta: la mitad queda en cada extremo.`,
  },
};

/** By how much the places of the first gate's posts miss its width, to the sixteenth of an inch; `over` in ft, under 0 where they are too near. */
export function offGateSentence(over: number, language: Language = "en"): string {
  const off = feetInches(Math.abs(over));
  const { fits, far, near } = offGate[language];
  return Math.abs(over) < 1 / 384 ? fits : (over > 0 ? far : near)(off);
}

/** What was found on a site and what to do about it, a sentence each; `room` is what a horse needs to turn, ft. */
export function siteSentences(found: Findings, room: number, language: Language = "en"): string[] {
  const say = words[language];
  return [
    ...found.wedges.map(({ neighbor, wedge }) => say.wedge(neighbor, wedge, room)),
    ...new Set(
      found.leaves.flatMap(({ gate, own, neighbors, gates }) => [
        ...(own === undefined ? [] : [say.own(gate, own)]),
        ...neighbors.map(({ neighbor, at }) => say.struck(gate, neighbor, at)),
        ...gates.map((other) => say.gates(gate, other)),
      ]),
    ),
    ...found.unclear.map(({ neighbor, why }) => say.unclear(neighbor, why)),
  ];
}
