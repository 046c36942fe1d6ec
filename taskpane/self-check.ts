import { calls } from "../functions/calls";
import { guides } from "../functions/examples";
import { formulaText } from "../functions/formula-text";
import { parseFormula } from "../src/sheets/parse";
import { selfCheckPlan, type SelfCheck } from "../src/sheets/self-check";
import { single } from "../src/sheets/value";
import { type SheetPlan } from "../src/sheets/plan";

/** The examples of every function's help as checks: each formula, and what the function gives here. */
export const checks = (): SelfCheck[] =>
  Object.entries(guides).flatMap(([id, { examples }]) =>
    examples.map(({ asks, terms }) => ({
      formula: parseFormula(formulaText(id, terms)),
      expected: single(calls[id](...terms)),
      says: `${id}: ${asks}`,
    })),
  );

/** The sheet that checks every function in the program that holds it. */
export const allChecks = (name: string): SheetPlan => selfCheckPlan(checks(), name);
