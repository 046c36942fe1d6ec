import { liveFormula } from "../../../src/sheets/formula";
import { movedDown } from "../../../src/sheets/moved";
import { parseFormula } from "../../../src/sheets/parse";
import { areasOf, entered, keysOf, newSheet, usedArea, type Area, type StoredSheet } from "./memory";

/** The workbook behind the stand-in. */
export interface Workbook {
  sheets: StoredSheet[];
  active: StoredSheet;
  selected: { row: number; column: number };
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

const find = (book: Workbook, name: unknown) =>
  book.sheets.find((sheet) => sheet.name.toLowerCase() === String(name).toLowerCase());
const onSheet = (sheet: StoredSheet | undefined): Target | undefined =>
  sheet && { kind: "Worksheet", sheet, areas: [] };
const part =
  (kind: string): Step =>
  (_, target) => ({ ...target, kind });
const range = (target: Target, areas: Area[], kind = "Range"): Target => ({ ...target, kind, areas });

/** The ways from one object to another; one that gives undefined names nothing. */
export const ways: Record<string, Step | undefined> = {
  "Workbook.Worksheets": part("Worksheets"),
  "Workbook.Application": part("Application"),
  "Workbook.GetActiveCell": (book, target) => {
    const { row, column } = book.selected;
    return range({ ...target, sheet: book.active }, [{ top: row, left: column, bottom: row, right: column }]);
  },
  "Worksheets.Add": (book, _, [name]) => {
    if (find(book, name)) throw new ActionFailure("ItemAlreadyExists");
    book.sheets.push(newSheet(String(name)));
    return onSheet(book.sheets.at(-1));
  },
  "Worksheets.GetActiveWorksheet": (book) => onSheet(book.active),
  "Worksheets.GetItem": (book, _, [name]) => {
    const sheet = find(book, name);
    if (!sheet) throw new ActionFailure("ItemNotFound");
    return onSheet(sheet);
  },
  "Worksheets.GetItemOrNullObject": (book, _, [name]) => onSheet(find(book, name)),
  "Worksheet.Copy": (book, { sheet }) => {
    let number = 2;
    while (find(book, `${sheet.name} (${number})`)) number++;
    book.sheets.push({ ...structuredClone(sheet), name: `${sheet.name} (${number})` });
    return onSheet(book.sheets.at(-1));
  },
  "Worksheet.GetRange": (_, target, [address]) => range(target, areasOf(String(address))),
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
  "Application.CreateWorkbook": (_, target, [file]) => ({
    ...target,
    kind: "NewWorkbook",
    detail: String(file),
  }),
};

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
const ofPicture = ["Shape.LockAspectRatio", "Shape.Width", "Shape.Height", "Shape.AltTextDescription", "Shape.Left", "Shape.Top"]; // prettier-ignore

/** Sets a property of an object; false where the stand-in does not know it. */
export function setProperty(book: Workbook, target: Target, name: string, value: unknown): boolean {
  const property = `${target.kind}.${name}`;
  const { sheet } = target;
  if (property === "Worksheet.Name") {
    if (find(book, value)) throw new ActionFailure("ItemAlreadyExists");
    sheet.name = String(value);
  } else if (property === "Range.Formulas" || property === "Range.NumberFormat")
    writeBlock(target, property, value);
  else if (looks.includes(property)) {
    const key = [target.kind, target.detail, name].filter(Boolean).join(".");
    for (const place of target.areas.flatMap((area) => keysOf(area).flat()))
      sheet.looks.set(place, { ...sheet.looks.get(place), [key]: value });
  } else if (ofSheet.includes(property)) sheet.set[property] = value;
  else if (ofPicture.includes(property)) target.picture![name] = value;
  else return false;
  return true;
}

/** Takes the looks of a kind away from the cells of a target. */
function clearLooks({ kind, sheet, areas }: Target): void {
  for (const place of areas.flatMap((area) => keysOf(area).flat())) {
    const kept = Object.entries(sheet.looks.get(place) ?? {}).filter(([key]) => !key.startsWith(`${kind}.`));
    sheet.looks.set(place, Object.fromEntries(kept));
  }
}

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
    else sheet.cells.set(key, entered(content));
  });
}

/** Copies one row of formulas over an area below it, each place in them moving along. */
function copyDown(sheet: StoredSheet, area: Area, from: string, kind: unknown): void {
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

/** The methods that do something and name nothing. */
export const methods: Record<
  string,
  ((book: Workbook, target: Target, given: Arguments) => void) | undefined
> = {
  "Application.SuspendScreenUpdatingUntilNextSync": () => undefined,
  // A block of over 1500 cells is cut by the library itself: this question first, then bands of rows.
  "Range._ValidateArraySize": () => undefined,
  "NewWorkbook.Open": (book, target) => void book.opened.push(target.detail!),
  "Worksheet.Activate": (book, { sheet }) => void (book.active = sheet),
  "Fill.Clear": (_, target) => clearLooks(target),
  "DataValidation.Clear": (_, target) => clearLooks(target),
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

/** What a target answers to a property that is asked for; undefined where the stand-in does not know it. */
export function propertyOf(target: Target, name: string): unknown {
  const [area] = target.areas;
  const block = (kind: "value" | "formula") =>
    keysOf(area).map((row) => row.map((key) => target.sheet.cells.get(key)?.[kind] ?? ""));
  const lookOf = (key: string) => target.sheet.looks.get(`${area.top} ${area.left}`)?.[key];
  const look = (otherwise: unknown) =>
    lookOf(`${target.kind}.${name[0].toUpperCase()}${name.slice(1)}`) ?? otherwise;
  const known: Record<string, (() => unknown) | undefined> = {
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
