import { areaAddress, rectangles } from "../../../src/hosts/excel/areas";
import { type Target, type Workbook } from "./actions";
import { areasOf, keysOf, type Area, type StoredSheet } from "./memory";

/** What the stand-in answers where a whole workbook is read: ways to objects, methods with results, properties. */

const onSheet = (target: Target, areas: Area[], kind: string): Target | undefined =>
  areas.length > 0 ? { ...target, kind, areas } : undefined;
const stored = (sheet: StoredSheet, name: string) =>
  areasOf(((sheet.set[name] as string | undefined) ?? "").replace(/\$/g, "")).filter(
    () => sheet.set[name] !== undefined,
  );

/** Merged areas as Excel tells them: one that was merged across is one a row. */
function mergedAreas({ set }: StoredSheet): Area[] {
  const merged = (set.merged as (Area & { across: boolean })[] | undefined) ?? [];
  return merged.flatMap(({ across, ...area }) => {
    if (!across) return [area];
    const rows = Array.from({ length: area.bottom - area.top + 1 }, (_, k) => area.top + k);
    return rows.map((row) => ({ ...area, top: row, bottom: row }));
  });
}

/** The cells that have a rule for what they accept, as runs down their columns. */
const ruledAreas = ({ looks }: StoredSheet): Area[] =>
  rectangles(
    [...looks]
      .filter(([, look]) => look["DataValidation.Rule"])
      .map(([key]) => key.split(" ").map(Number))
      .map(([row, column]) => ({ row, column })),
  );

const frozen = ({ set }: StoredSheet): Area[] =>
  set.frozenRows ? [{ top: 0, left: 0, bottom: (set.frozenRows as number) - 1, right: 99 }] : [];

export const wholeSheetWays: Record<string, (book: Workbook, target: Target) => Target | undefined> = {
  "PageLayout.GetPrintAreaOrNullObject": (_, target) =>
    onSheet(target, stored(target.sheet, "printArea"), "RangeAreas"),
  "PageLayout.GetPrintTitleRowsOrNullObject": (_, target) =>
    onSheet(target, stored(target.sheet, "titleRows"), "Range"),
  "Range.GetSpecialCellsOrNullObject": (_, target) => onSheet(target, ruledAreas(target.sheet), "RangeAreas"),
  "FreezePanes.GetLocationOrNullObject": (_, target) => onSheet(target, frozen(target.sheet), "Range"),
  "Range.GetMergedAreasOrNullObject": (_, target) => onSheet(target, mergedAreas(target.sheet), "RangeAreas"),
  "Range.ConditionalFormats": (_, target) => ({ ...target, kind: "ConditionalFormats" }),
  "Worksheet.Comments": (_, target) => ({ ...target, kind: "Comments" }),
};

/** How a cell looks, in the form in which Excel tells it. */
function cellProperties(look: Record<string, unknown> = {}): object {
  const edge = (name: string) => ({ style: look[`Border.Edge${name}.Style`] ?? "None" });
  return {
    format: {
      font: {
        bold: look["Font.Bold"] ?? false,
        italic: look["Font.Italic"] ?? false,
        size: look["Font.Size"] ?? 11,
        color: look["Font.Color"] ?? "#000000",
      },
      fill: { color: look["Fill.Color"] ?? "#FFFFFF" },
      borders: { top: edge("Top"), bottom: edge("Bottom"), left: edge("Left"), right: edge("Right") },
      horizontalAlignment: look["Format.HorizontalAlignment"] ?? "General",
      wrapText: look["Format.WrapText"] ?? false,
    },
  };
}

export const wholeSheetMethods: Record<string, (book: Workbook, target: Target) => unknown> = {
  "Comments.GetCount": (_, { sheet }) => sheet.set.comments ?? 0,
  "ConditionalFormats.GetCount": (_, { sheet }) => sheet.set.conditional ?? 0,
  "Range.GetCellProperties": (_, { sheet, areas }) =>
    keysOf(areas[0]).map((row) => row.map((key) => cellProperties(sheet.looks.get(key)))),
  "Range.GetColumnProperties": (_, { sheet, areas }) =>
    keysOf(areas[0])[0].map((_, k) => {
      const set = (sheet.set.columns as object[] | undefined)?.[k];
      return { columnHidden: false, format: { columnWidth: 48 }, ...set };
    }),
  "Range.GetRowProperties": (_, { sheet, areas }) =>
    keysOf(areas[0]).map(([key]) => {
      const look = sheet.looks.get(key) ?? {};
      return {
        rowHidden: look["Range.RowHidden"] ?? false,
        format: { rowHeight: look["Format.RowHeight"] ?? 15 },
      };
    }),
  "Shape.GetAsImage": (_, { picture }) => picture!.png,
  "Chart.GetImage": (_, { picture }) => Buffer.from(`chart ${picture!.Name as string}`).toString("base64"),
};

/** The pictures or charts of a sheet as a collection's items; undefined for a target that is none. */
export function itemsOf({ kind, sheet }: Target): object[] | undefined {
  if (kind === "Shapes") return sheet.pictures.map((picture, k) => ({ _Id: String(k), ...picture }));
  if (kind !== "Charts") return undefined;
  return sheet.charts.map(({ Name, Width, Height, at }, k) => {
    const [{ left, top }] = (at as Target).areas;
    return { _Id: String(k), Name, Width, Height, Left: left * 48, Top: top * 15 };
  });
}

export const wholeSheetProperties = (target: Target): Record<string, () => unknown> => ({
  "Worksheet.standardHeight": () => 15,
  "PageLayout.orientation": () => target.sheet.set["PageLayout.Orientation"] ?? "Portrait",
  "PageLayout.zoom": () => target.sheet.set["PageLayout.Zoom"] ?? { scale: 100 },
  "HeaderFooter.leftFooter": () => target.sheet.set["HeaderFooter.LeftFooter"] ?? "",
  "RangeAreas.address": () => target.areas.map((area) => `'A sheet'!${areaAddress(area)}`).join(","),
  "Range.columnCount": () => target.areas[0].right - target.areas[0].left + 1,
});
