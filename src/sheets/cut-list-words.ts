import { type CutAlike, type CutList } from "../estimate/cut-list";
import { type Label, type Language } from "../estimate/fields";
import { type Bend } from "../fence/bend";
import { feetInches, inchesAlone } from "../units/feet-inches";
import { degrees } from "../units/number-text";

const label = (en: string, es: string): Label => ({ en, es });

/** The words of a cut list that carry no figure. */
export const cutLabels = {
  title: label("Cut list", "Lista de cortes"),
  count: label("Count", "Cant."),
  stock: label("Stock", "Material"),
  cutInto: label("Cut each into", "Cortar cada una en"),
  left: label("Left over", "Sobra"),
  sawCuts: label(
    "Mark each piece on its posts before cutting. Saw cuts come out of what stock is longer than its name.",
    "Marque cada pieza en sus postes antes de cortar. Los cortes de sierra salen de lo que el material trae de más.",
  ),
  straight: label(
    "On straights a length runs over as many bays as it reaches.",
    "En lo recto una pieza cubre tantos tramos como alcance.",
  ),
} as const satisfies Record<string, Label>;

const names: Record<CutList["of"], Label> = {
  rails: label("Rails", "Travesaños"),
  "kick board": label("Kick board", "Tabla al pie"),
};

/** Like pieces of one length of stock: "2 of 7' 10 1/2", 1 of 4'". */
export const piecesWords: Record<Language, (cut: CutAlike) => string> = {
  en: ({ pieces }) => pieces.map(({ count, length }) => `${count} of ${feetInches(length)}`).join(", "),
  es: ({ pieces }) => pieces.map(({ count, length }) => `${count} de ${feetInches(length)}`).join(", "),
};

const inches = (size: number) => inchesAlone(size, 16);

/** What decided whether pieces span several bays of a curve. */
const bendWords: Record<Language, (bend: Bend) => string> = {
  en: ({ sentence }) => sentence,
  es: ({ bends, radius, ratio, thickness, least }) =>
    `${bends ? "Las piezas siguen la curva por varios tramos" : "Una pieza por tramo"}: un radio de ${feetInches(radius)} es ${Math.floor(ratio)} veces el grueso de ${inches(thickness)}, y se dobla a mano desde ${least} veces.`,
};

interface Words {
  heading(list: CutList, name: string): string;
  bevel(long: string, short: string, bevel: string): string;
}

const words: Record<Language, Words> = {
  en: {
    heading: ({ size, cut, stock, pieces }, name) =>
      `${name}, ${size}: ${cut} ${cut === 1 ? "length" : "lengths"} of ${feetInches(stock)} into ${pieces} ${pieces === 1 ? "piece" : "pieces"}`,
    bevel: (long, short, bevel) =>
      `On the curve both ends of a bay are cut ${bevel} off square: ${long} on the long face, ${short} on the short one. Ends at gate posts are square.`,
  },
  es: {
    heading: ({ size, cut, stock, pieces }, name) =>
      `${name}, ${stockInSpanish(size)}: ${cut} de ${feetInches(stock)}, en ${pieces} ${pieces === 1 ? "pieza" : "piezas"}`,
    bevel: (long, short, bevel) =>
      `En la curva los dos extremos se cortan a ${bevel} de la escuadra: ${long} por la cara larga, ${short} por la corta. En los postes de puerta van a escuadra.`,
  },
};

/** The name of a stock with its kind before its size: 2x6 board is a "tabla 2x6". */
const stockInSpanish = (size: string) =>
  size.replace(/^(.*) board$/, "tabla $1").replace(/^(.*) in pipe$/, 'tubo de $1"');

/** What heads a cut list. */
export const cutHeading = (list: CutList, language: Language) =>
  words[language].heading(list, names[list.of][language]);

/** What decided the pieces of some lists, and how their ends are cut, a sentence each and each once. */
export function cutSentences(lists: readonly CutList[], language: Language): string[] {
  const all = lists.flatMap(({ straight, bends, beveled }) => [
    ...(straight ? [cutLabels.straight[language]] : []),
    ...bends.map(bendWords[language]),
    ...beveled.map(({ long, short, bevel }) => words[language].bevel(feetInches(long), feetInches(short), degrees(bevel))),
  ]);
  return [...new Set([...all, cutLabels.sawCuts[language]])];
} // prettier-ignore
