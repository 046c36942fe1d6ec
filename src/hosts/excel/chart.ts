import { type PlanArea, type PlanChart } from "../../sheets/plan";
import { areaAddress } from "./areas";
import { once } from "./session";

const types = { column: "ColumnClustered", bar: "BarClustered" } as const;

/** Draws a chart of a plan as Excel's own, so that it follows the cells. Asks nothing back. */
export function addChart(sheet: Excel.Worksheet, plan: PlanChart): void {
  const range = ({ top, left, bottom, right }: PlanArea) =>
    once(sheet.getRangeByIndexes(top, left, bottom - top + 1, right - left + 1));
  const [first, ...others] = plan.series;
  const { top, bottom } = first.values;
  const chart = sheet.charts.add(types[plan.kind], range(first.values), top === bottom ? "Rows" : "Columns");
  chart.name = plan.description;
  chart.title.text = plan.title;
  chart.legend.visible = others.length > 0;
  chart.axes.categoryAxis.title.text = plan.axes.categories;
  chart.axes.valueAxis.title.text = plan.axes.values;
  const drawn = chart.series.getItemAt(0);
  drawn.name = first.name;
  drawn.setXAxisValues(range(plan.categories));
  for (const { name, values } of others) {
    const series = chart.series.add(name);
    series.setValues(range(values));
    series.setXAxisValues(range(plan.categories));
  }
  const { row, column } = plan;
  chart.setPosition(areaAddress({ top: row, left: column, bottom: row, right: column }));
  chart.width = plan.width;
  chart.height = plan.height;
}
