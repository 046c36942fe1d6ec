import { type Label, type Language } from "../estimate/fields";
import { put } from "./estimate-cells";
import {
  call,
  cell,
  expression,
  minus,
  number,
  operate,
  over,
  plus,
  text,
  times,
  when,
  type Expression,
  type Term,
} from "./expression";
import { type LayoutData } from "./layout-data";
import { labels, sentences } from "./layout-messages";
import { columns, factColumns } from "./layout-places";
import { type PlanCell } from "./plan"; // prettier-ignore

/** One input of the finished grade: what it says, its unit, where it begins, and what it may be. */
interface GradeInput {
  label: Label;
  unit: Label;
  value: number;
  range: readonly [number, number];
}

const sign = (both: string): Label => ({ en: both, es: both });

/** The grade that shots are held against until the crew types its own: level, its benchmark at 100 ft (common practice, no source). */
export const gradeInputs = {
  benchmark: { label: labels.benchmark, unit: labels.feet, value: 100, range: [-10_000, 20_000] },
  centerGrade: { label: labels.centerGrade, unit: labels.feet, value: 0, range: [-100, 100] },
  fall: { label: labels.fall, unit: sign("%"), value: 0, range: [0, 20] },
  fallBearing: { label: labels.fallBearing, unit: sign("°"), value: 0, range: [0, 360] },
  crown: { label: labels.crown, unit: sign("%"), value: 0, range: [0, 20] },
} as const satisfies Record<string, GradeInput>;

const names = Object.keys(gradeInputs) as (keyof typeof gradeInputs)[];

/** The rows that the grade takes, its heading among them. */
export const GRADE_ROWS = names.length + 1;

/** The heading and the inputs of the finished grade, from `row` down; `crown` says from where a crown falls. */
export function gradeCells(row: number, { language }: LayoutData, crown: Label = labels.crown): PlanCell[] {
  const across = factColumns.words + 2 - factColumns.label;
  return [
    { ...put(row, factColumns.label, labels.grade[language], "crewSection"), across },
    ...names.flatMap((name, k): PlanCell[] => {
      const { label, unit, value, range } = gradeInputs[name];
      const at = row + 1 + k;
      const message = sentences[language].within(range[0], range[1]);
      return [
        put(at, factColumns.label, (name === "crown" ? crown : label)[language], "crewLabel"),
        {
          ...put(at, factColumns.figure, value, "inputHeight"),
          input: true,
          accepts: { kind: "number", least: range[0], most: range[1], message },
        },
        put(at, factColumns.words, unit[language], "crewUnit"),
      ];
    }),
  ];
}

/**
 * What a stake's row says of its shot: to cut or to fill so much to the finished grade, in ft. Plain arithmetic, so
 * that it works without this add-in: the height at the center, less the fall along its bearing and the crown's, which
 * grows with how far the stake stands from the center, or of an arena from its middle line.
 */
export function cutOrFill(row: number, off: Expression, gradeRow: number, language: Language): Expression {
  const input = (name: keyof typeof gradeInputs) =>
    number(cell({ row: gradeRow + 1 + names.indexOf(name), column: factColumns.figure }));
  const at = (column: number) => cell({ row, column });
  const sine = (degrees: Term) => call("SIN", over(times(degrees, call("PI")), 180));
  const along = plus(
    times(at(columns.east), sine(input("fallBearing"))),
    times(at(columns.north), sine(plus(input("fallBearing"), 90))),
  );
  const drop = over(plus(times(input("fall"), along), times(input("crown"), off)), 100);
  const grade = minus(plus(input("benchmark"), input("centerGrade")), drop);
  const shot = at(columns.shot);
  const needed = call("ROUND", minus(grade, shot), 2);
  const { cut, fill } = sentences[language];
  const said = text(when(operate(needed, ">", 0), fill, when(operate(needed, "<", 0), cut, "")), call("FIXED", call("ABS", needed), 2));
  return when(call("ISNUMBER", shot), said, expression(""));
} // prettier-ignore
