import { HostError } from "../src/hosts/host";
import { type Notice } from "./command";
import { messages } from "./messages";

/** Runs commands one at a time and keeps the sentence that says what the last one came to. */
export class Runner {
  notice?: Notice;
  busy = false;
  /** What waits until the command that runs is over. */
  protected afterwards?: () => Promise<void>;

  /** The notice that was seen, and the sheet that was selected then. */
  private noticed?: { notice: Notice; sheet: string };

  constructor(protected readonly changed: () => void) {}

  /** Runs one command; while another runs, does nothing. What it throws becomes the notice, and nothing else changes. */
  async run(work: () => Promise<string>): Promise<void> {
    if (this.busy) return;
    this.busy = true;
    this.notice = undefined;
    this.changed();
    try {
      const text = await work();
      this.notice = text ? { kind: "done", text } : undefined;
    } catch (error) {
      this.refuse(error);
    }
    this.busy = false;
    this.changed();
    const next = this.afterwards;
    this.afterwards = undefined;
    await next?.();
  }

  /** Takes away what the last command said. */
  dismiss(): void {
    this.notice = undefined;
    this.changed();
  }

  /** Ends a notice once another sheet is selected than the one on which it was first seen. */
  protected endNotice(sheet: string): void {
    if (this.notice && this.notice === this.noticed?.notice) {
      if (this.noticed.sheet !== sheet) this.notice = undefined;
    } else this.noticed = this.notice && { notice: this.notice, sheet };
  }

  protected refuse(error: unknown, kind: "refused" | "unseen" = "refused"): void {
    const why = error instanceof Error ? error.message : String(error);
    this.notice = { kind, text: error instanceof HostError ? why : messages.failed(why) };
    this.changed();
  }
}
