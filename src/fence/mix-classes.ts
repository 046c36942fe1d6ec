import { EPSILON } from "../units/rounding";

/** More mixes than can be held or looked at. */
export class TooManyMixes extends Error {}

/** A panel length of the list a mix is made of. `chord` is pin to pin with the pin gap; `most` is how many may be used. */
export interface ListedPanel {
  chord: number;
  price: number;
  most: number;
}

/**
 * Panels of one length and price. `ranks` holds what each further one adds to the rank of a mix, in the order they are
 * used: the earlier listed first.
 */
export interface PanelClass {
  chord: number;
  price: number;
  ranks: number[];
}

/**
 * How mixes are numbered. A mix's rank is its counts read as the digits of one whole number, the first listed in the
 * highest place: of two mixes, the one with more of the earlier listed has the higher rank, and ranks of parts add up.
 */
export interface Ranking {
  places: number[];
  bases: number[];
}

/** The ranking of mixes of these panels. Throws where there are more mixes than whole numbers to tell them apart. */
export function ranking(listed: readonly ListedPanel[]): Ranking {
  const bases = listed.map(({ most }) => most + 1);
  const places: number[] = [];
  let place = 1;
  for (let i = bases.length - 1; i >= 0; i--) {
    places[i] = place;
    place *= bases[i];
  }
  if (place > Number.MAX_SAFE_INTEGER) throw new TooManyMixes();
  return { places, bases };
}

/** The counts, in the order listed, of the mix that has this rank. */
export function countsOf(rank: number, { places, bases }: Ranking): number[] {
  return places.map((place, i) => Math.floor(rank / place) % bases[i]);
}

/** The panels that may be used, those of equal length and price together, longest first. */
export function panelClasses(listed: readonly ListedPanel[], { places }: Ranking): PanelClass[] {
  const classes: PanelClass[] = [];
  listed.forEach(({ chord, price, most }, i) => {
    if (most === 0) return;
    const ranks = Array<number>(most).fill(places[i]);
    const same = classes.find((c) => near(c.chord, chord) && near(c.price, price));
    if (same) same.ranks.push(...ranks);
    else classes.push({ chord, price, ranks });
  });
  return classes.sort((a, b) => b.chord - a.chord);
}

const near = (a: number, b: number) => Math.abs(a - b) <= EPSILON;
