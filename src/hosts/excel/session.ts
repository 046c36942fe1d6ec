import { HostError } from "../host";
import { messages, sentence } from "./messages";

/** What an error of the Office library tells: its code, and which traces ran before it. */
interface Failure {
  code?: string;
  message?: string;
  traceMessages?: string[];
}

/** Runs a batch of requests; what Excel refuses comes back as a HostError. */
export async function session<T>(body: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run(body);
  } catch (error) {
    throw refusal(error);
  }
}

/** Runs a batch that the user can take back in one step, where Excel can group; throws what Excel throws. */
export const asOneStep = <T>(
  body: (context: Excel.RequestContext) => Promise<T>,
  beforeRetry?: (error: unknown) => Promise<unknown>,
): Promise<T> => asOneStepAsked(() => undefined, body, beforeRetry);

/**
 * The same for a batch whose requests are asked for by `ask` before it runs: a range named while a batch runs takes one
 * request more. Where Excel cannot group after all, all is asked for again once `beforeRetry` is through.
 */
export async function asOneStepAsked<Asked, T>(
  ask: (context: Excel.RequestContext) => Asked,
  body: (context: Excel.RequestContext, asked: Asked) => Promise<T>,
  beforeRetry: (error: unknown) => Promise<unknown> = async () => undefined,
): Promise<T> {
  const run = (options: Excel.RunOptions) => {
    const previousObjects = new Excel.RequestContext();
    const asked = ask(previousObjects);
    return Excel.run({ ...options, previousObjects }, (context) => body(context, asked));
  };
  if (!Office.context.requirements.isSetSupported("ExcelApi", "1.20")) return run({});
  try {
    return await run({ mergeUndoGroup: true });
  } catch (error) {
    if (codeOf(error) !== "UndoNotSupported") throw error;
    await beforeRetry(error);
    return run({});
  }
}

/** Excel's code for an error, or undefined where no answer of Excel's stands behind it. */
export const codeOf = (error: unknown): string | undefined => (error as Failure | undefined)?.code;

/** The traces that ran before a batch failed, or undefined where Excel gave no answer. */
export const tracesOf = (error: unknown): string[] | undefined =>
  (error as Failure | undefined)?.traceMessages;

/** An error as a refusal whose sentence a user can act on; one that is a refusal already stays. */
export function refusal(error: unknown): HostError {
  if (error instanceof HostError) return error;
  const { code, message } = (error ?? {}) as Failure;
  return new HostError(code ? sentence(code, message ?? "") : messages.silent);
}

/**
 * A range for use within one batch. Excel then keeps no reference to it, which saves two requests a range and a
 * round trip to let go of it.
 */
export const once = <R extends Excel.Range | Excel.RangeAreas>(range: R): R => range.untrack() as R;
