/** What the last command came to, in a sentence; `unseen`: the workbook cannot be looked at just now. */
export interface Notice {
  kind: "done" | "refused" | "unseen";
  text: string;
}

/** A command at the foot of the panel: what its button says, and what it does. It says in a sentence what came of it. */
export interface Command {
  label: string;
  run(): Promise<string>;
}
