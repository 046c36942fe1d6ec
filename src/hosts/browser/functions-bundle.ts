import { type CellError } from "../../units/cell";
import { bundleMissing } from "./messages";

/** What `functions.json` says of one argument. */
export interface ArgumentMetadata {
  name: string;
  description?: string;
  dimensionality?: "scalar" | "matrix";
  optional?: boolean;
}

/** What `functions.json` says of one worksheet function. */
export interface FunctionMetadata {
  id: string;
  name: string;
  description?: string;
  parameters: ArgumentMetadata[];
}

/** A worksheet function as its bundle offers it: cells in, cells out. */
export type BundledFunction = (...cells: unknown[]) => unknown;

/** The built worksheet functions with what their metadata says. */
export interface FunctionsBundle {
  metadata: FunctionMetadata[];
  functions: Map<string, BundledFunction>;
}

/** The error value of the worksheet-functions interface: a code, and why. */
export class FunctionError extends Error {
  constructor(
    readonly code: CellError["error"],
    message?: string,
  ) {
    super(message);
  }
}

const errorCodes = {
  divisionByZero: "#DIV/0!",
  invalidName: "#NAME?",
  invalidNumber: "#NUM!",
  invalidReference: "#REF!",
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  nullReference: "#NULL!",
} as const;

/**
 * Loads the functions that the build made for spreadsheets, `functions.json` and `functions.js`, from beside the page.
 * The bundle announces its functions to a global that a spreadsheet host provides; here it meets one that collects
 * them. Throws a HostError where either file is missing.
 */
export async function loadFunctionsBundle(): Promise<FunctionsBundle> {
  const functions = new Map<string, BundledFunction>();
  const associate = (id: string | Record<string, BundledFunction>, work?: BundledFunction) => {
    if (typeof id === "string") functions.set(id, work!);
    else for (const [each, its] of Object.entries(id)) functions.set(each, its);
  };
  Object.assign(globalThis, {
    CustomFunctions: { associate, Error: FunctionError, ErrorCode: errorCodes },
  });
  const answer = await fetch("functions.json").catch(() => undefined);
  if (!answer?.ok) throw bundleMissing("functions.json");
  const { functions: metadata } = (await answer.json()) as { functions: FunctionMetadata[] };
  await new Promise<void>((loaded, failed) => {
    const script = document.createElement("script");
    script.src = "functions.js";
    script.onload = () => loaded();
    script.onerror = () => failed(bundleMissing("functions.js"));
    document.head.append(script);
  });
  return { metadata, functions };
}
