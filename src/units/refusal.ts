/**
 * Why a question has no result. `value`: the input is outside what is allowed, a cell then shows #VALUE!;
 * `answer`: the input is fine but nothing answers it, a cell then shows #N/A. The text names the argument and
 * says what is allowed, or why there is no answer.
 */
export class Refusal extends Error {
  constructor(
    readonly kind: "value" | "answer",
    message: string,
  ) {
    super(message);
    this.name = "Refusal";
  }
}

/** The refusal of an input that is not allowed. */
export const notAllowed = (message: string) => new Refusal("value", message);

/** The refusal of a question that nothing answers. */
export const noAnswer = (message: string) => new Refusal("answer", message);
