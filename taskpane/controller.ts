import { fieldOf } from "../src/estimate/fields";
import { type Job } from "../src/estimate/job";
import { HostError, type WorkbookHost, type WorkbookView } from "../src/hosts/host";
import { changedFixed, changedInputs, isPlainCopy, ownTyped, restoredKeys } from "../src/sheets/keyed";
import { pricesLayoutOf } from "../src/sheets/prices-layout";
import { messages } from "./messages";
import { type Figured, type Figurer, type Result } from "./result";
import { Runner } from "./runner";
import { labelsOf } from "./shown";
import {
  answered,
  isOther,
  looked,
  newJobIn,
  newState,
  nowIn,
  showSelected,
  takenBack,
  unwritten,
  type PanelState,
  type Source,
} from "./state";

/** The panel's dealings with a workbook: one thing at a time, and whatever fails leaves every answer where it was. */
export class Controller extends Runner {
  state: PanelState = newState();
  /** What the fields lead to; nothing until what figures them is there. */
  figured: Figured = { old: true, own: [] };
  /** A new job was asked for while answers are not written. */
  asking = false;
  private figurer?: Figurer;
  private figuring?: Promise<void>;
  private turn = 0;

  constructor(
    private readonly host: WorkbookHost,
    changed: () => void,
  ) {
    super(changed);
  }

  /** Looks at the workbook now and after every change in it, and fetches what figures the fields. Returns how to stop. */
  start(): () => void {
    this.figuring = this.fetchFigurer();
    const stop = this.host.watch(() => void this.look());
    void this.look();
    return stop;
  }

  /** Takes what was typed or chosen, by field. */
  answer(changes: Job): void {
    this.notice = undefined;
    this.set(answered(this.state, changes));
  }

  /** The count of a field's figure without the user's own in its place. */
  counted = (use: string) => this.figurer?.counted(this.state, use, fieldOf(use).insteadOf!) ?? "";

  /** Looks at the workbook; while a command runs, as soon as it is over. Only the newest look counts. */
  async look(): Promise<void> {
    const turn = ++this.turn;
    try {
      const view = this.busy ? undefined : await this.host.look();
      if (turn !== this.turn) return;
      if (!view || this.busy) this.afterwards = () => this.look();
      else {
        if (this.notice?.kind === "unseen") this.notice = undefined;
        this.see(view);
      }
    } catch (error) {
      this.refuse(error, "unseen");
    }
  }

  /** Writes the answers as a new estimate, and with the first one the prices; nothing in the workbook is written over. */
  write = () =>
    this.run(async () => {
      const { answers, good } = this.state;
      const { missing } = await this.result();
      const { newEstimate } = await import("./new-estimate");
      const { name, plans } = newEstimate(await this.host.look(), good, missing);
      await this.host.write(plans);
      const after = await this.host.look();
      const state = looked(this.state, after);
      this.set(
        after.active.name === name
          ? nowIn({ ...state, answers: this.state.answers }, after.active, answers)
          : state,
      );
      return messages.written(name);
    });

  /** Writes an estimate whose figures are fixed once more, live, with the lines of the user's own; the copy stays. */
  makeLive = () =>
    this.run(async () => {
      const { sheet, job } = await this.present();
      const { missing } = await this.result();
      const { newEstimate, typedInto } = await import("./new-estimate");
      const { name, plans } = newEstimate(await this.host.look(), job, missing);
      const live = typedInto(plans.at(-1)!, ownTyped(sheet));
      await this.host.write([...plans.slice(0, -1), live]);
      this.see(await this.host.look());
      return messages.madeLive(sheet.name, name);
    });

  /** Writes the answers that changed into the input cells of their estimate; nothing else on it is touched. */
  update = () =>
    this.run(async () => {
      const source = await this.present();
      if (isPlainCopy(source.sheet, source.content.formulas))
        throw new HostError(messages.isPlain(source.name));
      if (isOther(this.state))
        throw new HostError(messages.otherStructure(source.name, String(source.job.structure)));
      const { answers, good } = this.state;
      const mine = Object.fromEntries(unwritten(this.state).map((key) => [key, good[key]]));
      const { fixedOf } = await import("../src/estimate/fixed");
      const job = { ...source.job, ...mine };
      await this.host.update(source.name, [
        ...changedInputs(source.sheet, { ...source.sheet.job, ...mine }),
        ...changedFixed(source.sheet, job, fixedOf(job)),
      ]);
      const after = await this.host.look();
      const state = looked(this.state, after);
      const left = Object.keys(mine).filter((key) => source.sheet.missing.includes(key));
      this.set(
        left.length === 0 && after.active.name === source.name ? nowIn(state, after.active, answers) : state,
      );
      if (left.length > 0) throw new HostError(messages.noCellFor(labelsOf(left)));
      return messages.updated(source.name);
    });

  /** Adds rows without a price for the items that the prices have no row for. */
  addPriceRows = () =>
    this.run(async () => {
      this.see(await this.host.look());
      const { view, prices } = this.state;
      const { made } = await this.result();
      const { appendedRow, missingPrices, rowsToAdd } = await import("./price-rows-to-add");
      const rows = rowsToAdd(missingPrices(made.missing, prices));
      if (!view!.prices || rows.length === 0) return messages.noRowsNeeded;
      const layout = pricesLayoutOf(view!.prices.name, view!.prices.values);
      await this.host.append(
        view!.prices.name,
        rows.map((row) => appendedRow(row, layout)),
      );
      this.see(await this.host.look());
      return messages.rowsAdded(rows.length, view!.prices.name);
    });

  /** Puts missing keys back where their rows still stand. */
  putBack = () =>
    this.run(async () => {
      const { name, sheet, content } = await this.present();
      await this.host.update(name, restoredKeys(sheet, content.values));
      this.see(await this.host.look());
      return messages.putBack(name);
    });

  /** Puts a formula into the selected cell where that is empty. */
  put = (formula: string) =>
    this.run(async () => {
      const { sheet, address } = await this.host.putFormula(formula);
      this.see(await this.host.look());
      return messages.putInto(`${sheet}!${address}`);
    });

  /** Shows the selected estimate; answers that are not written are set aside. */
  showSelected = () => this.set(showSelected(this.state));

  /** Stays with what is in the fields and no longer offers the selected estimate. */
  keep(): void {
    const sheet = this.state.view!.active.name;
    this.set({ ...this.state, passed: { sheet, quiet: true } });
  }

  /** Brings the answers that were set aside back, with their estimate. */
  takeBack = () =>
    this.run(async () => {
      const { source } = this.state.aside.at(-1)!;
      let view = await this.host.look();
      if (source !== undefined && view.active.name !== source && view.sheetNames.includes(source)) {
        await this.host.show(source);
        view = await this.host.look();
      }
      this.set(takenBack({ ...this.state, view }));
      return "";
    });

  /** Forgets the answers that were set aside last, on the user's word. */
  dropAside = () => this.set({ ...this.state, aside: this.state.aside.slice(0, -1) });

  /** Starts a new job; where answers are not written, asks first. */
  newJob(confirmed = false): void {
    this.asking = !confirmed && unwritten(this.state).length > 0;
    if (this.asking) this.changed();
    else this.set(newJobIn(this.state));
  }

  /** Leaves the fields as they are after a new job was asked for. */
  stay(): void {
    this.asking = false;
    this.changed();
  }

  /** Takes in what a look at the workbook found. */
  readonly see = (view: WorkbookView) => {
    if (!this.busy) this.endNotice(view.active.name);
    this.set(looked(this.state, view));
  };

  /** The estimate of the fields as its sheet stands now, shown in the workbook. */
  async present(): Promise<Source> {
    const { name } = this.state.source!;
    let view = await this.host.look();
    if (view.active.name !== name && view.sheetNames.includes(name)) {
      await this.host.show(name);
      view = await this.host.look();
    }
    this.see(view);
    const { source } = this.state;
    if (!source || source.name !== view.active.name) throw new HostError(messages.gone(name));
    return source;
  }

  /** Fetches what figures the fields once these stand on the page, and figures them. */
  private async fetchFigurer(): Promise<void> {
    const fetched = await import("./result").catch(() => undefined);
    this.figurer = fetched?.figurer();
    if (!fetched) this.figured = { ...this.figured, refusal: messages.noFigures };
    this.set(this.state);
  }

  /** What the fields lead to, as soon as it can be told. */
  private async result(): Promise<Result> {
    await this.figuring;
    if (!this.figured.result) throw new HostError(messages.noFigures);
    return this.figured.result;
  }

  private set(state: PanelState): void {
    const sameSource = state.source?.name === this.state.source?.name;
    this.state = state;
    const last = sameSource ? this.figured.result : undefined;
    if (this.figurer) this.figured = this.figurer.figured(state, last);
    if (unwritten(state).length === 0) this.asking = false;
    this.changed();
  }
}
