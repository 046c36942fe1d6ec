import { label } from "./label";
import { shape, svgText, type Shape } from "./shape";

/** A column chart as plain data: one column a value, and a line across that values are held against. */
export interface ColumnChart {
  title: string;
  /** What the heights measure, with its unit. */
  axis: string;
  /** In order; a value of null leaves its place empty. Values are 0 or more. */
  columns: readonly { label: string; value: number | null; marked?: boolean }[];
  line?: { label: string; value: number };
  /** Pixels. */
  width: number;
  height: number;
  /** How a value is written at its column. */
  write(value: number): string;
}

const paper = "#ffffff";

const margin = { top: 34, right: 14, bottom: 26, left: 14 };

/**
 * The chart as SVG, legible in black and white: a marked column is dark, the others are pale with an outline,
 * the line is told above them, and every column carries its value over whatever lies behind it.
 */
export function columnChart(chart: ColumnChart): Shape {
  const { width, height, columns, line, title, axis, write } = chart;
  const base = height - margin.bottom;
  const most = Math.max(1e-9, line?.value ?? 0, ...columns.map(({ value }) => value ?? 0));
  const up = (value: number) => base - (value / most) * (base - margin.top - 22);
  const step = (width - margin.left - margin.right) / Math.max(1, columns.length);
  const middle = (k: number) => margin.left + step * (k + 0.5);
  return shape(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: "img",
      "font-family": "system-ui, sans-serif",
      "font-size": 12,
      fill: "#000000",
    },
    shape("title", {}, title),
    shape("text", { x: margin.left, y: 16, "font-size": 14, "font-weight": "bold" }, title),
    shape("text", { x: width - margin.right, y: 16, "text-anchor": "end", fill: "#444444" }, axis),
    shape("line", { x1: margin.left, y1: base, x2: width - margin.right, y2: base, stroke: "#000000" }),
    ...columns.flatMap(({ label: name, value, marked }, k) => [
      ...(value === null
        ? []
        : [
            shape("rect", {
              x: middle(k) - step * 0.3,
              y: up(value),
              width: step * 0.6,
              height: base - up(value),
              fill: marked ? "#444444" : "#cccccc",
              stroke: "#000000",
            }),
          ]),
      shape("text", { x: middle(k), y: base + 17, "text-anchor": "middle" }, name),
    ]),
    ...(line
      ? [
          shape("line", {
            x1: margin.left,
            y1: up(line.value),
            x2: width - margin.right,
            y2: up(line.value),
            stroke: "#000000",
            "stroke-width": 1.5,
            "stroke-dasharray": "7 4",
          }),
          // Told over the columns, where no value stands in its way.
          shape("line", {
            x1: margin.left,
            y1: 29,
            x2: margin.left + 28,
            y2: 29,
            stroke: "#000000",
            "stroke-width": 1.5,
            "stroke-dasharray": "7 4",
          }),
          shape("text", { x: margin.left + 34, y: 33 }, line.label),
        ]
      : []),
    ...columns.flatMap(({ value }, k) =>
      value === null ? [] : [label(write(value), { x: middle(k), y: up(value) - 5 }, paper)],
    ),
  );
}

/** The chart as SVG text, for a sheet. */
export const columnChartDrawing = (chart: ColumnChart): string => svgText(columnChart(chart));
