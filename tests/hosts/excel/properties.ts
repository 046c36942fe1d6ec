import { liveFormula } from "../../../src/sheets/formula";
import { movedDown } from "../../../src/sheets/moved";
import { parseFormula } from "../../../src/sheets/parse";
import { ActionFailure, findSheet, type Target, type Workbook } from "./actions";
import { wholeSheetProperties } from "./whole-sheets";
import { areasOf, entered, keysOf, type Area, type StoredSheet } from "./memory";

const looks = ["Font.Bold", "Font.Italic", "Font.Size", "Font.Color", "Fill.Color", "Format.HorizontalAlignment", "Format.WrapText", "Format.RowHeight", "Border.Style", "DataValidation.Rule", "DataValidation.ErrorAlert", "DataValidation.Prompt", "DataValidation.IgnoreBlanks", "Range.RowHidden"]; // prettier-ignore
const ofSheet = [
  "PageLayout.Orientation",
  "PageLayout.CenterHorizontally",
  "PageLayout.LeftMargin",
  "PageLayout.RightMargin",
  "PageLayout.TopMargin",
  "PageLayout.BottomMargin",
  "PageLayout.FooterMargin",
  "PageLayout.Zoom",
  "HeaderFooter.LeftFooter",
  "HeaderFooter.RightFooter",
];
const ofPicture = ["Chart.Width", "Chart.Height", "Chart.Name", "Series.Name", "ChartTitle.Text", "ChartLegend.Visible", "CategoryTitle.Text", "ValueTitle.Text", "Shape.LockAspectRatio", "Shape.Width", "Shape.Height", "Shape.AltTextDescription", "Shape.Left", "Shape.Top"]; // prettier-ignore

/** Sets a property of an object; false where the stand-in does not know it. */
export function setProperty(book: Workbook, target: Target, name: string, value: unknown): boolean {
  const property = `${target.kind}.${name}`;
  const { sheet } = target;
  if (property === "Worksheet.Name") {
    if (findSheet(book, value)) throw new ActionFailure("ItemAlreadyExists");
    sheet.name = String(value);
  } else if (property === "Range.Formulas" || property === "Range.NumberFormat")
    writeBlock(target, property, value);
  else if (looks.includes(property)) {
    const key = [target.kind, target.detail, name].filter(Boolean).join(".");
    for (const place of target.areas.flatMap((area) => keysOf(area).flat()))
      sheet.looks.set(place, { ...sheet.looks.get(place), [key]: value });
  } else if (ofSheet.includes(property)) sheet.set[property] = value;
  else if (ofPicture.includes(property)) target.picture![picturePart(target.kind, name)] = value;
  else return false;
  return true;
}

/** A chart's parts are kept with the chart, under their own names. */
const picturePart = (kind: string, name: string) => (/Title$|Legend$/.test(kind) ? kind : name);

function writeBlock({ areas: [area], sheet }: Target, property: string, value: unknown): void {
  const keys = keysOf(area);
  const block = value as (number | string | boolean | null)[][];
  if (block.length !== keys.length || block.some((row) => row.length !== keys[0].length))
    throw new ActionFailure("InvalidArgument");
  block.flat().forEach((content, k) => {
    const key = keys.flat()[k];
    if (content === null) return;
    if (property === "Range.NumberFormat") sheet.looks.set(key, { ...sheet.looks.get(key), format: content });
    else if (content === "") sheet.cells.delete(key);
    else sheet.cells.set(key, entered(content, sheet.looks.get(key)?.format === "@"));
  });
}

/** Copies one row of formulas over an area below it, each place in them moving along. */
export function copyDown(sheet: StoredSheet, area: Area, from: string, kind: unknown): void {
  const [source] = areasOf(from);
  const [row] = keysOf(source);
  if (kind !== "Formulas" || source.top !== source.bottom || row.length !== keysOf(area)[0].length)
    throw new ActionFailure("InvalidArgument");
  keysOf(area).forEach((keys, k) =>
    keys.forEach((key, column) => {
      const formula = String(sheet.cells.get(row[column])!.formula);
      const copied = movedDown(parseFormula(formula), area.top + k - source.top)!;
      sheet.cells.set(key, entered(liveFormula(copied)));
    }),
  );
}

/** Takes the looks of a kind away from the cells of a target. */
export function clearLooks({ kind, sheet, areas }: Target): void {
  for (const place of areas.flatMap((area) => keysOf(area).flat())) {
    const kept = Object.entries(sheet.looks.get(place) ?? {}).filter(([key]) => !key.startsWith(`${kind}.`));
    sheet.looks.set(place, Object.fromEntries(kept));
  }
}

/** What a target answers to a property that is asked for; undefined where the stand-in does not know it. */
export function propertyOf(target: Target, name: string): unknown {
  const [area] = target.areas;
  const block = (kind: "value" | "formula") =>
    keysOf(area).map((row) => row.map((key) => target.sheet.cells.get(key)?.[kind] ?? ""));
  const lookOf = (key: string) => target.sheet.looks.get(`${area.top} ${area.left}`)?.[key];
  const look = (otherwise: unknown) =>
    lookOf(`${target.kind}.${name[0].toUpperCase()}${name.slice(1)}`) ?? otherwise;
  const known: Record<string, (() => unknown) | undefined> = {
    ...wholeSheetProperties(target),
    "Worksheet.name": () => target.sheet.name,
    "Range.values": () => block("value"),
    "Range.formulas": () => block("formula"),
    "Range.rowIndex": () => area.top,
    "Range.columnIndex": () => area.left,
    "Range.rowCount": () => area.bottom - area.top + 1,
    "Range.numberFormat": () =>
      keysOf(area).map((row) => row.map((key) => target.sheet.looks.get(key)?.format ?? "General")),
    "Fill.color": () => look("#FFFFFF"),
    "Font.color": () => look("#000000"),
    "DataValidation.rule": () => look({}),
    "DataValidation.errorAlert": () => look({ title: "", message: "", showAlert: true, style: "Stop" }),
    "DataValidation.prompt": () => look({ title: "", message: "", showPrompt: true }),
    "DataValidation.ignoreBlanks": () => look(true),
    "DataValidation.type": () => (lookOf("DataValidation.Rule") ? "Custom" : "None"),
    "Range.left": () => area.left * 48,
    "Range.top": () => area.top * 15,
  };
  return known[`${target.kind}.${name}`]?.();
}
