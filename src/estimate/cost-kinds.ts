import { type LineSection } from "./own-lines";

/** What the cost of a line is for: it decides the markup on it. */
export const costKinds = ["material", "labor", "rental", "sub", "freight"] as const;
export type CostKind = (typeof costKinds)[number];

/** The kind of cost of a section's lines, the user's own among them. */
export const costOfSection: Record<LineSection, CostKind> = {
  fence: "material",
  holes: "material",
  gates: "material",
  base: "material",
  footing: "material",
  hauling: "freight",
  supplies: "material",
  equipment: "rental",
  labor: "labor",
  subcontract: "sub",
};

/** Lines that are of another kind than their section: holes are augered, and posts driven, at a price each. */
export const strayLines: Record<string, { section: LineSection; kind: CostKind }> = {
  holes: { section: "holes", kind: "sub" },
  mobilization: { section: "equipment", kind: "freight" },
};

/** The kind of cost of a line, by its key and section. */
export const costOf = ({ key, section }: { key: string; section: LineSection }): CostKind =>
  strayLines[key]?.kind ?? costOfSection[section];
