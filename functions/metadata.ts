/** One argument as the spreadsheet is told of it. */
export interface ParameterMetadata {
  name: string;
  description: string;
  type: string;
  dimensionality?: string;
  optional?: boolean;
}

/** One function as the spreadsheet is told of it. */
export interface FunctionMetadata {
  id: string;
  name: string;
  description: string;
  helpUrl: string;
  parameters: ParameterMetadata[];
  result: { dimensionality?: string };
}

/** The content of functions.json. */
export interface Metadata {
  /** True lets an error in a cell reach arguments of type any. It stands beside the functions, for all of them. */
  allowErrorForDataTypeAny?: boolean;
  /** False gives arguments of type any the plain value of a cell that holds a richer data type. */
  allowCustomDataForDataTypeAny?: boolean;
  functions: FunctionMetadata[];
}

/** The address that the help of a function has in the source. */
export const DEVELOPMENT_HOST = "https://localhost:3000";

/**
 * Completes what the generator makes of the doc comments: help lies at the host (an address without a slash at the
 * end), and errors in cells reach the functions, which the generator has no word for.
 */
export function finishMetadata(generated: Metadata, host: string): Metadata {
  const functions = generated.functions.map((one) => ({
    ...one,
    helpUrl: one.helpUrl.replace(DEVELOPMENT_HOST, host),
  }));
  return { functions, allowErrorForDataTypeAny: true, allowCustomDataForDataTypeAny: false };
}
