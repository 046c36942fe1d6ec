import { isError, type CellError } from "../../units/cell";
import { type PenFunction } from "../../sheets/evaluate";
import { type Value } from "../../sheets/value";
import {
  FunctionError,
  type BundledFunction,
  type FunctionMetadata,
  type FunctionsBundle,
} from "./functions-bundle";
import { failed, oneCell } from "./messages";

/**
 * The functions of a bundle, by name, as documents see them: plain values in, plain values or errors out, nothing
 * thrown. Each argument reaches the function in the shape that its metadata declares.
 */
export function penFunctions({ metadata, functions }: FunctionsBundle): (name: string) => PenFunction {
  const made = new Map<string, PenFunction>();
  for (const one of metadata) {
    const work = functions.get(one.id);
    if (work) made.set(one.id, guarded(one, work));
  }
  return (name) => made.get(name) ?? (() => ({ error: "#NAME?" }));
}

function guarded({ id, parameters }: FunctionMetadata, work: BundledFunction): PenFunction {
  return (...terms) => {
    try {
      const cells = parameters.map(({ name, dimensionality }, k) => argument(terms[k], dimensionality, name));
      const result = work(...cells);
      return Array.isArray(result)
        ? (result as unknown[][]).map((row) => row.map((one) => shown(one, id)))
        : shown(result, id);
    } catch (error) {
      return shown(error, id);
    }
  };
}

/** An argument that is left out reaches a function as null, whatever its shape. */
function argument(value: Value | undefined, dimensionality: string | undefined, name: string): unknown {
  if (value === undefined) return null;
  const rows = Array.isArray(value) ? value : [[value]];
  if (dimensionality === "matrix") return rows.map((row) => row.map(received));
  if (rows.length > 1 || rows[0].length > 1) throw new FunctionError("#VALUE!", oneCell(name));
  return received(rows[0][0]);
}

const received = (cell: unknown) =>
  isError(cell) ? new FunctionError(cell.error, cell.message) : (cell ?? null);

function shown(result: unknown, id: string): string | number | boolean | CellError {
  if (result instanceof FunctionError) return { error: result.code, message: result.message };
  if (result instanceof Error) return { error: "#VALUE!", message: failed(id) };
  return (result ?? "") as string | number | boolean;
}
