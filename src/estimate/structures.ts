/** What a job builds: it decides which fields, sections and lines an estimate has. */
export const structures = ["panel pen", "post pen", "panel arena", "post arena"] as const;

/** One of the structures above. */
export type Structure = (typeof structures)[number];

/** The structures that are round, and those that have four sides. */
export const roundPens = ["panel pen", "post pen"] as const satisfies Structure[];
export const arenas = ["panel arena", "post arena"] as const satisfies Structure[];

/** The structures of panels, and those of posts with rails. */
export const panelFences = ["panel pen", "panel arena"] as const satisfies Structure[];
export const postFences = ["post pen", "post arena"] as const satisfies Structure[];

/** What belongs to some structures only; to all where nothing is said. */
export interface OfStructures {
  structures?: readonly Structure[];
}

/** Whether a thing belongs to a structure. */
export const belongs = ({ structures: some }: OfStructures, structure: Structure) =>
  some === undefined || some.includes(structure);
