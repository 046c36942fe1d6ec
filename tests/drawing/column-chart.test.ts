import fc from "fast-check";
import { columnChart, columnChartDrawing, type ColumnChart } from "../../src/drawing/column-chart";
import { type Shape } from "../../src/drawing/shape";

const chart = (values: (number | null)[], line?: number): ColumnChart => ({
  title: "Price by size",
  axis: "$",
  columns: values.map((value, k) => ({ label: `${50 + k} ft`, value, marked: k === 0 })),
  ...(line === undefined ? {} : { line: { label: "Budget", value: line } }),
  width: 460,
  height: 220,
  write: (value) => `$${value}`,
});

const tagged = (whole: Shape, tag: string) =>
  whole.children.flatMap((one) => (typeof one === "object" && one.tag === tag ? [one] : []));
const at = ({ attributes }: Shape, name: string) => Number(attributes[name]);

describe("a column chart", () => {
  it("draws heights in proportion to their values from one base line, the line across in the same measure", () => {
    const positive = fc.array(fc.double({ min: 1, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(positive, fc.double({ min: 1, max: 1e6, noNaN: true }), (values, line) => {
        const drawn = columnChart(chart(values, line));
        const heights = tagged(drawn, "rect").map((bar) => at(bar, "height"));
        const [base, across] = tagged(drawn, "line").map((one) => at(one, "y1"));
        const unit = heights[0] / values[0];
        heights.forEach((height, k) => expect(height).toBeCloseTo(values[k] * unit, 6));
        expect(base - across).toBeCloseTo(line * unit, 6);
        for (const bar of tagged(drawn, "rect"))
          expect(at(bar, "y") + at(bar, "height")).toBeCloseTo(base, 6);
        for (const height of [...heights, base - across]) expect(height).toBeLessThan(220);
      }),
    );
  });

  it("leaves the place of a size without a price empty and keeps its label", () => {
    const text = columnChartDrawing(chart([4000, null, 6000]));
    expect(text.match(/<rect /g)).toHaveLength(2);
    for (const label of ["50 ft", "51 ft", "52 ft", "$4000", "$6000"]) expect(text).toContain(label);
  });

  it("keeps what people wrote as text", () => {
    const text = columnChartDrawing({ ...chart([1]), title: `<script>"x"&` });
    expect(text).not.toContain("<script>");
    expect(text).toContain("&lt;script&gt;&quot;x&quot;&amp;");
  });
});
