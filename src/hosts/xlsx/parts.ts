import { type Archive } from "./archive";
import { attributes, element, tags, texts, unescape } from "./markup";

/** One sheet of a file, before its cells are read. */
export interface SheetPart {
  name: string;
  path: string;
  hidden: boolean;
  /** Notes by address. */
  notes: Map<string, string>;
  printArea?: string;
  printTitles?: string;
}

/** What the file's main part says. */
export interface BookParts {
  sheets: SheetPart[];
  activeSheet?: string;
  date1904: boolean;
  /** Names that a user defined. */
  names: number;
  chartSheets: number;
}

/** Finds the sheets of a file in their order, with the notes and print areas that belong to them. */
export function bookParts(archive: Archive): BookParts {
  const book = archive.text("xl/workbook.xml") ?? "";
  const targets = relations(archive, "xl/workbook.xml");
  const listed = tags(element(book, "sheets"), "sheet").map((sheet) => ({
    name: sheet.name ?? "",
    hidden: sheet.state === "hidden" || sheet.state === "veryHidden",
    path: targets.find(({ id }) => id === sheet.id)?.target ?? "",
  }));
  const names = [...book.matchAll(/(<definedName\s[^<>]*>)([^<]*)<\/definedName>/g)].map(([, tag, text]) => ({
    ...attributes(tag),
    text: unescape(text),
  })) as { name: string; localSheetId?: string; hidden?: string; text: string }[];
  const special = (name: string, sheet: number) =>
    names.find((one) => one.name === `_xlnm.${name}` && one.localSheetId === String(sheet))?.text;
  const [view] = tags(book, "workbookView");
  return {
    sheets: listed
      .map((sheet, k) => ({
        ...sheet,
        notes: notes(archive, sheet.path),
        printArea: special("Print_Area", k),
        printTitles: special("Print_Titles", k),
      }))
      .filter(({ path }) => !path.includes("chartsheets/")),
    activeSheet: listed[Number(view?.activeTab ?? 0)]?.name,
    date1904: /^(1|true)$/.test(tags(book, "workbookPr")[0]?.date1904 ?? ""),
    names: names.filter(({ name, hidden }) => !name.startsWith("_xlnm.") && hidden !== "1").length,
    chartSheets: listed.filter(({ path }) => path.includes("chartsheets/")).length,
  };
}

/** What a part of the file points at, as paths from the root. */
export function relations(archive: Archive, part: string): { id: string; kind: string; target: string }[] {
  const cut = part.lastIndexOf("/");
  const [folder, file] = [part.slice(0, cut), part.slice(cut + 1)];
  return tags(archive.text(`${folder}/_rels/${file}.rels`) ?? "", "Relationship").map(
    ({ Id, Type, Target = "" }) => ({
      id: Id,
      kind: Type?.split("/").pop() ?? "",
      target: resolved(folder, Target.trim()),
    }),
  );
}

function resolved(folder: string, target: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const steps = folder.split("/");
  for (const step of target.split("/"))
    if (step === "..") steps.pop();
    else if (step !== ".") steps.push(step);
  return steps.join("/");
}

function notes(archive: Archive, sheet: string): Map<string, string> {
  const found = new Map<string, string>();
  for (const { kind, target } of relations(archive, sheet)) {
    if (kind !== "comments") continue;
    for (const note of (archive.text(target) ?? "").split("</comment>")) {
      const written = note.slice(note.lastIndexOf("<comment "));
      const { ref } = attributes(written.slice(0, written.indexOf(">")));
      if (ref) found.set(ref, texts(written, "t").join(""));
    }
  }
  return found;
}
