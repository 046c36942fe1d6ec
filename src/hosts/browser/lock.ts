/** The hold of one tab on a workbook: while it lasts no other tab of this browser may write. */
export interface Hold {
  held: boolean;
  /** Settles when another tab has let go; never where this tab holds the workbook itself. */
  freed: Promise<void>;
}

/** Takes the hold where no other tab has it. The browser lets go when the tab closes, however it closes. */
export function takeHold(name: string): Promise<Hold> {
  const never = new Promise<void>(() => {});
  return new Promise((answer, failed) => {
    navigator.locks
      .request(name, { ifAvailable: true }, (lock) => {
        if (lock) {
          answer({ held: true, freed: never });
          return never;
        }
        // Waiting in line takes nothing from the other tab; once it is our turn the line is left again at once.
        answer({ held: false, freed: navigator.locks.request(name, () => undefined) });
        return undefined;
      })
      .catch(failed);
  });
}
