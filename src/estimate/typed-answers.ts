import { Refusal } from "../units/refusal";
import { type FieldValue, type Question } from "./field";
import { readField } from "./job";

/** What typed answers come to by key, null where none was typed, and what is wrong with those that cannot be read. */
export interface TypedAnswers {
  read: Record<string, FieldValue>;
  problems: Record<string, string>;
}

/** The typed answers of some questions as readField reads them; a problem leaves the others read. */
export function readTyped(questions: readonly Question[], typed: Record<string, string>): TypedAnswers {
  const answers: TypedAnswers = { read: {}, problems: {} };
  for (const question of questions) {
    answers.read[question.key] = null;
    try {
      answers.read[question.key] = readField(question, typed[question.key]);
    } catch (refusal) {
      if (!(refusal instanceof Refusal)) throw refusal;
      answers.problems[question.key] = refusal.message;
    }
  }
  return answers;
}
