import { type Section } from "./fields";
import { belongs, postFences, type Structure } from "./structures";

/** A line that the user typed into a section of the estimate. */
export interface OwnLine {
  /** Which blank line of the section holds it: own_fence_1, own_fence_2, …. */
  key: string;
  quantity: number | null;
  price: number | null;
  taxed: boolean;
}

/** The sections that lines stand in; the others hold inputs and sums alone. */
export const lineSections = [
  "fence",
  "holes",
  "gates",
  "base",
  "footing",
  "hauling",
  "supplies",
  "equipment",
  "labor",
  "subcontract",
] as const satisfies Section[];

/** A section of lines. */
export type LineSection = (typeof lineSections)[number];

/** The sections of lines that an estimate of this structure has. */
export const lineSectionsOf = (structure: Structure): readonly LineSection[] =>
  lineSections.filter((section) => section !== "holes" || belongs({ structures: postFences }, structure));

/** The blank lines at the end of a section. */
export const ownLineKeys = (section: LineSection) => [`own_${section}_1`, `own_${section}_2`];

/** The section of one of the user's own lines, by its key. */
export const sectionOfOwn = (key: string) => key.split("_")[1] as LineSection;

/** What the user types of a line of their own; its key with one of these after it names the cell. */
export const ownParts = ["item", "quantity", "unit", "price", "taxed"] as const;

/** The keys of the user's own lines in all sections. */
export const allOwnKeys = lineSections.flatMap(ownLineKeys);
