/** What the last command came to, in a sentence. */
export interface Notice {
  kind: "done" | "refused";
  text: string;
}

/** A command at the foot of the panel: what its button says, and what it does. It says in a sentence what came of it. */
export interface Command {
  label: string;
  run(): Promise<string>;
}
