/** What a job builds: it decides which fields, sections and lines an estimate has. */
export const structures = ["panel pen", "post pen"] as const;

/** One of the structures above. */
export type Structure = (typeof structures)[number];

/** What belongs to some structures only; to all where nothing is said. */
export interface OfStructures {
  structures?: readonly Structure[];
}

/** Whether a thing belongs to a structure. */
export const belongs = ({ structures: some }: OfStructures, structure: Structure) =>
  some === undefined || some.includes(structure);
