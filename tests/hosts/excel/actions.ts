import { areasOf, entered, newSheet, usedArea, type Area, type StoredCell, type StoredSheet } from "./memory";
import { wholeSheetMethods, wholeSheetWays } from "./whole-sheets";
import { clearLooks, copyDown } from "./properties";

/** The workbook behind the stand-in. */
export interface Workbook {
  sheets: StoredSheet[];
  active: StoredSheet;
  selected: { row: number; column: number; bottom?: number; right?: number };
  opened: string[];
}

/** An object that a request names: its kind, and what it stands for. */
export interface Target {
  kind: string;
  sheet: StoredSheet;
  areas: Area[];
  detail?: string;
  picture?: Record<string, unknown>;
}

/** A failure of one action, by Excel's code. */
export class ActionFailure extends Error {
  constructor(readonly code: string) {
    super(`stand-in: ${code}`);
  }
}

type Arguments = unknown[];
type Step = (book: Workbook, target: Target, given: Arguments) => Target | undefined;

/** The sheet of a name, whatever its capitals. */
export const findSheet = (book: Workbook, name: unknown) =>
  book.sheets.find((sheet) => sheet.name.toLowerCase() === String(name).toLowerCase());
const onSheet = (sheet: StoredSheet | undefined): Target | undefined =>
  sheet && { kind: "Worksheet", sheet, areas: [] };
const part =
  (kind: string): Step =>
  (_, target) => ({ ...target, kind });
const range = (target: Target, areas: Area[], kind = "Range"): Target => ({ ...target, kind, areas });

const seriesOf = ({ picture }: Target) => picture!.series as Record<string, unknown>[];

/** The ways from one object to another; one that gives undefined names nothing. */
export const ways: Record<string, Step | undefined> = {
  "Workbook.Worksheets": part("Worksheets"),
  "Workbook.Application": part("Application"),
  "Workbook.GetActiveCell": (book, target) => {
    const { row, column } = book.selected;
    return range({ ...target, sheet: book.active }, [{ top: row, left: column, bottom: row, right: column }]);
  },
  "Workbook.GetSelectedRange": (book, target) => {
    const { row, column, bottom = row, right = column } = book.selected;
    return range({ ...target, sheet: book.active }, [{ top: row, left: column, bottom, right }]);
  },
  "Worksheets.Add": (book, _, [name]) => {
    if (findSheet(book, name)) throw new ActionFailure("ItemAlreadyExists");
    book.sheets.push(newSheet(String(name)));
    return onSheet(book.sheets.at(-1));
  },
  "Worksheets.GetActiveWorksheet": (book) => onSheet(book.active),
  "Worksheets.GetItem": (book, _, [name]) => {
    const sheet = findSheet(book, name);
    if (!sheet) throw new ActionFailure("ItemNotFound");
    return onSheet(sheet);
  },
  "Worksheets.GetItemOrNullObject": (book, _, [name]) => onSheet(findSheet(book, name)),
  "Worksheet.Copy": (book, { sheet }) => {
    let number = 2;
    while (findSheet(book, `${sheet.name} (${number})`)) number++;
    book.sheets.push({ ...structuredClone(sheet), name: `${sheet.name} (${number})` });
    return onSheet(book.sheets.at(-1));
  },
  "Worksheet.GetRange": (_, target, [address]) => range(target, areasOf(String(address ?? "1:1000"))),
  "Worksheet.GetRanges": (_, target, [address]) => range(target, areasOf(String(address)), "RangeAreas"),
  "Worksheet.GetRangeByIndexes": (_, target, given) => {
    const [top, left, rows, columns] = given as number[];
    return range(target, [{ top, left, bottom: top + rows - 1, right: left + columns - 1 }]);
  },
  "Worksheet.GetUsedRangeOrNullObject": (_, target) => {
    const area = usedArea(target.sheet);
    return area && range(target, [area]);
  },
  "Range.GetRow": (_, target, [k]) => {
    const [{ top, left, right }] = target.areas;
    return range(target, [{ top: top + Number(k), left, bottom: top + Number(k), right }]);
  },
  "Range.GetBoundingRect": (_, target, [other]) => {
    const [[{ top, left }], [{ bottom, right }]] = [target.areas, (other as Target).areas];
    return range(target, [{ top, left, bottom, right }]);
  },
  "Worksheet.Charts": part("Charts"),
  "Charts.Add": (_, target, [type, source, by]) => {
    target.sheet.charts.push({ type, source: (source as Target).areas[0], by, series: [{}] });
    return { ...target, kind: "Chart", picture: target.sheet.charts.at(-1) };
  },
  "Chart.Title": part("ChartTitle"),
  "Chart.Legend": part("ChartLegend"),
  "Chart.Axes": part("ChartAxes"),
  "ChartAxes.CategoryAxis": part("CategoryAxis"),
  "ChartAxes.ValueAxis": part("ValueAxis"),
  "CategoryAxis.Title": part("CategoryTitle"),
  "ValueAxis.Title": part("ValueTitle"),
  "Chart.Series": part("ChartSeries"),
  "ChartSeries.GetItemAt": (_, target, [k]) => ({
    ...target,
    kind: "Series",
    picture: seriesOf(target)[Number(k)],
  }),
  "ChartSeries.Add": (_, target, [name]) => {
    const series = { Name: name };
    seriesOf(target).push(series);
    return { ...target, kind: "Series", picture: series };
  },
  "Worksheet.FreezePanes": part("FreezePanes"),
  "Worksheet.PageLayout": part("PageLayout"),
  "Worksheet.Shapes": part("Shapes"),
  "PageLayout.HeadersFooters": part("HeadersFooters"),
  "HeadersFooters.DefaultForAllPages": part("HeaderFooter"),
  "Shapes.AddImage": (_, target, [png]) => {
    target.sheet.pictures.push({ png });
    return { ...target, kind: "Shape", picture: target.sheet.pictures.at(-1) };
  },
  "Shapes.GetItem": (_, target, [id]) => ({
    ...target,
    kind: "Shape",
    picture: target.sheet.pictures[Number(id)],
  }),
  "Range.Format": part("Format"),
  "Range.DataValidation": part("DataValidation"),
  "RangeAreas.Format": part("Format"),
  "RangeAreas.DataValidation": part("DataValidation"),
  "Format.Font": part("Font"),
  "Format.Fill": part("Fill"),
  "Format.Borders": part("Borders"),
  "Borders.GetItem": (_, target, [edge]) => ({ ...target, kind: "Border", detail: String(edge) }),
  "Charts.GetItem": (_, target, [id]) => ({
    ...target,
    kind: "Chart",
    picture: target.sheet.charts[Number(id)],
  }),
  ...wholeSheetWays,
  "Application.CreateWorkbook": (_, target, [file]) => ({
    ...target,
    kind: "NewWorkbook",
    detail: String(file),
  }),
};

/** Adds the sheets of a file, which to the stand-in are sheets of its own in JSON, under names that are free. */
function insertFile(book: Workbook, file: string): string[] {
  const text = Buffer.from(file, "base64").toString();
  if (!text.startsWith("PK")) throw new ActionFailure("InvalidArgument");
  return (JSON.parse(text.slice(2)) as { name: string; cells: [string, string][] }[]).map(
    ({ name, cells }) => {
      let [free, number] = [name, 2];
      while (findSheet(book, free)) free = `${name} (${number++})`;
      const held = cells.map(([key, content]): [string, StoredCell] => [key, entered(content)]);
      book.sheets.push({ ...newSheet(free), cells: new Map(held) });
      return free;
    },
  );
}

/** The methods that name nothing: what each does, and the value that it answers with, if any. */
export const methods: Record<
  string,
  ((book: Workbook, target: Target, given: Arguments) => unknown) | undefined
> = {
  "Application.SuspendScreenUpdatingUntilNextSync": () => undefined,
  "Workbook.InsertWorksheetsFromBase64": (book, _, [file]) => insertFile(book, String(file)),
  ...wholeSheetMethods,
  // A block of over 1500 cells is cut by the library itself: this question first, then bands of rows.
  "Range._ValidateArraySize": () => undefined,
  "NewWorkbook.Open": (book, target) => void book.opened.push(target.detail!),
  "Worksheet.Activate": (book, { sheet }) => void (book.active = sheet),
  "Fill.Clear": (_, target) => clearLooks(target),
  "DataValidation.Clear": (_, target) => clearLooks(target),
  "Chart.SetPosition": (_, { picture }, [cell]) => void (picture!.at = cell),
  "Series.SetValues": (_, { picture }, [source]) => void (picture!.values = (source as Target).areas[0]),
  "Series.SetXAxisValues": (_, { picture }, [source]) =>
    void (picture!.categories = (source as Target).areas[0]),
  "Worksheet.Delete": (book, { sheet }) => void book.sheets.splice(book.sheets.indexOf(sheet), 1),
  "Range.SetColumnProperties": (_, { sheet }, [columns]) => void (sheet.set.columns = columns),
  "Range.Merge": (_, { sheet, areas }, [across]) =>
    void (sheet.set.merged = [...((sheet.set.merged as object[]) ?? []), { ...areas[0], across }]),
  "Range.CopyFrom": (_, { sheet, areas }, [from, kind]) => copyDown(sheet, areas[0], String(from), kind),
  "FreezePanes.FreezeRows": (_, { sheet }, [rows]) => void (sheet.set.frozenRows = rows),
  "PageLayout.SetPrintArea": (_, { sheet }, [area]) => void (sheet.set.printArea = area),
  "PageLayout.SetPrintTitleRows": (_, { sheet }, [rows]) => void (sheet.set.titleRows = rows),
};
for (const event of ["Activated", "DataChanged", "Calculated", "SelectionChanged"])
  for (const door of ["_Register", "_Unregister"])
    methods[`Worksheets.${door}${event}Event`] = () => undefined;
