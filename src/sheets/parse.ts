import { type CellError } from "../units/cell";
import { notAllowed } from "../units/refusal";
import { columnNumber, type Place } from "./address";
import { type Expression, type Operator } from "./expression";
import { strength } from "./formula";
import { messages } from "./messages";
import { COLUMNS, DEEPEST, LONGEST_FORMULA, patterns, rectangle, ROWS } from "./notation";

/**
 * Reads a formula in a spreadsheet's English notation, with or without its leading equals sign. What only a
 * spreadsheet understands (names, tables, whole columns, array constants, other workbooks) stays as it is written,
 * in a part of kind `verbatim`. Throws a Refusal that says what is wrong where the text is no formula, is longer
 * than 8192 characters or is nested deeper than 100.
 */
export function parseFormula(text: string): Expression {
  if (text.length > LONGEST_FORMULA) throw notAllowed(messages.formulaTooLong(LONGEST_FORMULA));
  let at = text.startsWith("=") ? 1 : 0;
  let depth = 0;

  const wrong = () => notAllowed(messages.formulaUnread(at + 1));
  const take = (pattern: RegExp): RegExpExecArray | undefined => {
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (found) at += found[0].length;
    return found ?? undefined;
  };
  const skip = () => take(patterns.blanks);
  const next = (sign: string): boolean => {
    skip();
    const found = text.startsWith(sign, at);
    if (found) at += sign.length;
    return found;
  };
  const verbatim = (start: number): Expression => ({ kind: "verbatim", text: text.slice(start, at).trim() });

  function deeper<T>(read: () => T): T {
    if (++depth > DEEPEST) throw notAllowed(messages.formulaTooDeep(DEEPEST));
    const found = read();
    depth--;
    return found;
  }

  function whole(least = 0): Expression {
    let left = signed();
    for (;;) {
      skip();
      const before = at;
      const operator = take(patterns.operator)?.[0] as Operator | undefined;
      if (!operator) return left;
      if (strength[operator] < least) {
        at = before;
        return left;
      }
      left = { kind: "operation", operator, left, right: whole(strength[operator] + 1) };
    }
  }

  // A sign binds tighter than a power in a spreadsheet: -2^2 is 4.
  function signed(): Expression {
    skip();
    if (next("+")) return deeper(signed);
    if (!next("-")) return percent();
    const of = deeper(signed);
    const plain = of.kind === "constant" && typeof of.value === "number" && of.value > 0;
    return plain ? { kind: "constant", value: -(of.value as number) } : { kind: "negative", of };
  }

  function percent(): Expression {
    let of = joined();
    while (next("%")) of = { kind: "percent", of };
    return of;
  }

  /** One part, together with what stands to it in a way that only a spreadsheet understands (A1:INDEX(…), A1#). */
  function joined(): Expression {
    skip();
    const start = at;
    if (take(/@/y)) {
      const of = deeper(joined);
      return of.kind === "range" || of.kind === "verbatim" ? verbatim(start) : of;
    }
    const found = part();
    let strange = false;
    while (found.kind !== "constant") {
      const end = at;
      if (take(/[ \t\r\n]*:|[ \t\r\n]+(?=[\p{L}_$'[])/uy)) {
        skip();
        part();
      } else if (!take(/#(?![A-Z])/iy)) {
        at = end;
        break;
      }
      strange = true;
    }
    return strange ? verbatim(start) : found;
  }

  function part(): Expression {
    const start = at;
    if (take(/\(/y)) {
      const inner = deeper(whole);
      if (next(")")) return inner;
      if (!next(",")) throw wrong();
      list();
      return verbatim(start);
    }
    if (take(/\{/y)) {
      if (!take(/(?:[^"{}]|"(?:[^"]|"")*")*\}/y)) throw wrong();
      return verbatim(start);
    }
    const quoted = take(patterns.text);
    if (quoted) return { kind: "constant", value: quoted[1].replace(/""/g, '"') };
    const error = take(patterns.error);
    if (error) return { kind: "constant", value: { error: error[0].toUpperCase() as CellError["error"] } };
    const penCall = take(patterns.penCall);
    if (penCall) return { kind: "pen", name: penCall[1].toUpperCase(), arguments: list() };
    const called = take(patterns.call);
    if (called) return call(called[1].toUpperCase(), list(), start);
    return reference(start) ?? number() ?? name(start);
  }

  function call(of: string, terms: (Expression | undefined)[], start: number): Expression {
    if ((of === "TRUE" || of === "FALSE") && !terms.length) return { kind: "constant", value: of === "TRUE" };
    if (of !== "SINGLE" || terms.length !== 1) return { kind: "call", name: of, arguments: terms };
    const [term] = terms;
    return term && term.kind !== "range" && term.kind !== "verbatim" ? term : verbatim(start);
  }

  /** The arguments up to the closing bracket; an omitted one is undefined. */
  function list(): (Expression | undefined)[] {
    if (next(")")) return [];
    const terms: (Expression | undefined)[] = [];
    for (;;) {
      skip();
      terms.push(/[,)]/.test(text[at] ?? "") ? undefined : deeper(whole));
      if (next(")")) return terms;
      if (!next(",")) throw wrong();
    }
  }

  function number(): Expression | undefined {
    const found = take(patterns.number);
    if (!found) return undefined;
    if (!Number.isFinite(Number(found[0]))) throw wrong();
    return { kind: "constant", value: Number(found[0]) };
  }

  function reference(start: number): Expression | undefined {
    const several = take(patterns.sheets);
    if (several && /[[\]:]/.test(several[0])) return part() && verbatim(start);
    at = start;
    const named = take(patterns.sheet);
    const sheet = named && (named[1]?.replace(/''/g, "'") ?? named[2]);
    if (take(patterns.columnsOrRows)) return verbatim(start);
    const from = place();
    const foreign = sheet !== undefined && /[[\]:]/.test(sheet);
    if (!from) {
      if (named && (take(patterns.error) || take(patterns.name))) return verbatim(start);
      if (named) throw wrong();
      return undefined;
    }
    const corner = at;
    const to = take(/:/y) && place();
    if (!to) at = corner;
    if (foreign) return verbatim(start);
    const on = sheet === undefined ? {} : { sheet };
    return to ? rectangle(from, to, on) : { kind: "cell", place: { ...on, ...from } };
  }

  function place(): Place | undefined {
    const before = at;
    const found = take(patterns.cell);
    if (!found) return undefined;
    const [row, column] = [Number(found[4]) - 1, columnNumber(found[2])];
    if (row >= 0 && row < ROWS && column < COLUMNS)
      return {
        row,
        column,
        ...(found[3] ? { fixedRow: true } : {}),
        ...(found[1] ? { fixedColumn: true } : {}),
      };
    at = before;
    return undefined;
  }

  function name(start: number): Expression {
    const found = take(patterns.name)?.[0];
    if (found && /^(true|false)$/i.test(found)) return { kind: "constant", value: /^t/i.test(found) };
    const table = takeBrackets();
    if (!found && !table) throw wrong();
    if (table && take(/[\p{L}\p{N}_. ]*!/uy)) part();
    return verbatim(start);
  }

  /** A table's bracketed part, whose brackets nest and whose apostrophe takes the next sign as it is. */
  function takeBrackets(): boolean {
    let open = 0;
    for (const start = at; at < text.length; at++) {
      if (text[at] === "[") open++;
      else if (at === start) return false;
      else if (text[at] === "'") at++;
      else if (text[at] === "]" && --open === 0) return at++ > start;
    }
    if (open) throw wrong();
    return false;
  }

  const read = whole();
  skip();
  if (at < text.length) throw wrong();
  return read;
}
