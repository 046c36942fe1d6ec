import "./workbook.css";
import { HostError } from "../src/hosts/host";
import { startNotes, unexpected } from "../src/hosts/browser/messages";
import { printSheet } from "../src/hosts/browser/print";
import { startWorkbook } from "../src/hosts/browser/start";
import { demoPlans } from "../src/sheets/demo";
import { mountPanel } from "./panel";
import { downloadXlsx, mayReplace, openFile, saveCopy } from "./workbook-files";

const at = <Kind extends HTMLElement = HTMLButtonElement>(id: string) => document.getElementById(id) as Kind;

/** Says a sentence across the top of the page; an empty one clears it. */
function say(sentence: string): void {
  at("said").textContent = sentence;
  at("said").hidden = sentence === "";
}

/** Lets a button do its work, one press at a time, and says what went wrong where it did. */
function press(id: string, work: () => Promise<void>): void {
  at(id).addEventListener("click", () => {
    at(id).disabled = true;
    say("");
    work()
      .catch((error: unknown) => say(error instanceof HostError ? error.message : unexpected))
      .finally(() => (at(id).disabled = false));
  });
}

/** The panel and the sheets stand side by side; on a narrow screen one of them shows. */
function showSide(panel: boolean): void {
  document.querySelector("main")!.classList.toggle("panel-first", panel);
  at("show-panel").setAttribute("aria-pressed", String(panel));
  at("show-sheets").setAttribute("aria-pressed", String(!panel));
  window.dispatchEvent(new Event("resize"));
}

async function start(): Promise<void> {
  const started = await startWorkbook(at("grid"), demoPlans, () => say(startNotes["not kept"]));
  const { workbook, host, notes, freed } = started;
  say(notes.map((note) => startNotes[note]).join(" "));
  void freed.then(() => say(startNotes["let go"]));

  press("new", async () => {
    if (!(await mayReplace(started, "A new workbook replaces the one in this page."))) return;
    await started.startNew();
    await started.keep();
  });
  press("open", () => openFile(started));
  press("save", async () => saveCopy(started));
  press("download", () => downloadXlsx(started));
  press("print", async () => {
    const { sheet, shown } = workbook.activeSheet();
    await printSheet(sheet, shown);
  });
  press("undo", async () => void (await workbook.grid.undo()));
  press("redo", async () => void (await workbook.grid.redo()));
  for (const id of ["new", "open", "undo", "redo"]) at(id).disabled = workbook.readOnly;
  at("show-sheets").addEventListener("click", () => showSide(false));
  at("show-panel").addEventListener("click", () => showSide(true));
  const why = () => (at("why").textContent = workbook.explain() ?? "");
  host.watch(why);
  why();
  mountPanel(at<HTMLElement>("panel"), host);
  // For the browser's console and for tests: the workbook that this page shows.
  Object.assign(window, { penstake: started });
}

start().catch((error: unknown) => say(error instanceof HostError ? error.message : unexpected));
