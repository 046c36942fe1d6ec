import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import "@univerjs/preset-sheets-drawing/lib/index.css";
import { LifecycleStages, LocaleType, LogLevel, mergeLocales, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import validationWords from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsDrawingPreset } from "@univerjs/preset-sheets-drawing";
import drawingWords from "@univerjs/preset-sheets-drawing/locales/en-US";

/** The grid library's whole interface, under the project's own name for it. */
export type Grid = FUniver;

/** What the grid takes from outside: functions of formulas, and what it shows of them while one is typed. */
type Formulas = Pick<
  NonNullable<NonNullable<Parameters<typeof UniverSheetsCorePreset>[0]>["formula"]>,
  "function" | "description"
>;

/** Puts a grid into a page element: cells, formula bar, sheet tabs; the page brings its own buttons. */
export function createGrid(container: HTMLElement, formula: Formulas): Grid {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(coreWords, validationWords, drawingWords) },
    logLevel: LogLevel.ERROR,
  });
  const presets = [
    // A text such as 268' is meant as a text: the grid's hint that it could be a number stays off.
    UniverSheetsCorePreset({
      container,
      toolbar: false,
      formula,
      sheets: { disableForceStringAlert: true, disableForceStringMark: true },
    }),
    UniverSheetsDataValidationPreset(),
    UniverSheetsDrawingPreset(),
  ];
  for (const { plugins } of presets)
    for (const plugin of plugins)
      if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
      else univer.registerPlugin(plugin);
  return FUniver.newAPI(univer);
}

/** Settles when the grid has drawn its first workbook: only from then on does its engine work out formulas. */
export function drawn(grid: Grid): Promise<void> {
  return new Promise((done) => {
    const check = () => {
      if (grid.getCurrentLifecycleStage() < LifecycleStages.Rendered) return;
      heard.dispose();
      done();
    };
    const heard = grid.addEvent("LifeCycleChanged", () => setTimeout(check));
    setTimeout(check);
  });
}
