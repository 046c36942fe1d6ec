/** How long nothing must happen before the panel hears of a change, milliseconds. */
const quiet = 150;

/**
 * Calls back after the selection, the active sheet, a cell or a result has changed; changes that follow each other
 * closely are one. The result ends it.
 */
export function watchWorkbook(changed: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let over = false;
  const heard = async () => {
    if (over) return;
    clearTimeout(timer);
    timer = setTimeout(changed, quiet);
  };
  const handlers = Excel.run(async (context) => {
    const { onActivated, onChanged, onCalculated, onSelectionChanged } = context.workbook.worksheets;
    const all = [
      onActivated.add(heard),
      onChanged.add(heard),
      onCalculated.add(heard),
      onSelectionChanged.add(heard),
    ];
    await context.sync();
    return all;
  }).catch(() => []);
  return () => {
    over = true;
    clearTimeout(timer);
    void handlers.then(async (all) => {
      all.forEach((handler) => handler.remove());
      await all[0]?.context.sync();
    });
  };
}
