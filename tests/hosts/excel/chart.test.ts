import { type PlanChart } from "../../../src/sheets/plan";
import { contentOfPlan } from "../../../src/sheets/workbook-content";
import { sheetNamed } from "./outcomes";
import { samplePlan } from "./sample-plan";
import { countingWorkbook } from "./stand-in";

const down = (column: number) => ({ top: 2, left: column, bottom: 6, right: column });
const chart: PlanChart = {
  row: 9,
  column: 1,
  width: 360,
  height: 200,
  kind: "column",
  title: "Price by size",
  axes: { categories: "Size, ft", values: "Price, $" },
  categories: down(1),
  series: [
    { name: "Price", values: down(4) },
    { name: "Budget", values: down(5) },
  ],
  svg: `<svg xmlns="http://www.w3.org/2000/svg" width="360" height="200"/>`,
  description: "Price of five sizes beside the budget",
};
const plan = (charts: PlanChart[]) => ({ ...samplePlan("Compare", 8), pictures: [], charts });

test("a chart is Excel's own, follows the cells, and stands where it was planned", async () => {
  const excel = countingWorkbook();
  await excel.host.write([plan([chart])]);
  const sheet = sheetNamed(excel, "Compare");
  expect(sheet.pictures).toEqual([]);
  expect(sheet.charts).toEqual([
    {
      type: "ColumnClustered",
      source: down(4),
      by: "Columns",
      Name: chart.description,
      ChartTitle: "Price by size",
      ChartLegend: true,
      CategoryTitle: "Size, ft",
      ValueTitle: "Price, $",
      series: [
        { Name: "Price", categories: down(1) },
        { Name: "Budget", values: down(5), categories: down(1) },
      ],
      at: "B10",
      Width: 360,
      Height: 200,
    },
  ]);
  expect(excel.trips()).toBe(2);
});

test("numbers in a row make bars from that row, and one series alone needs no legend", async () => {
  const excel = countingWorkbook();
  const across = { top: 3, left: 2, bottom: 3, right: 6 };
  await excel.host.write([
    plan([
      {
        ...chart,
        kind: "bar",
        categories: { ...across, top: 2, bottom: 2 },
        series: [{ name: "Price", values: across }],
      },
    ]),
  ]);
  expect(sheetNamed(excel, "Compare").charts[0]).toMatchObject({
    type: "BarClustered",
    by: "Rows",
    ChartLegend: false,
    source: across,
  });
});

test("a host that draws no charts gets the picture in its place", () => {
  const { row, column, width, height, svg, description } = chart;
  expect(contentOfPlan(plan([chart])).pictures).toEqual([{ row, column, width, height, svg, description }]);
  expect(contentOfPlan(plan([])).pictures).toEqual([]);
});
