/** How long nothing must happen before the panel hears of a change, milliseconds. */
const quiet = 150;
/** How long until the next try where Excel takes no handlers (a cell is being edited, say), milliseconds. */
const patience = 2000;

/**
 * Calls back after the selection, the active sheet, a cell or a result has changed; changes that follow each other
 * closely are one. The result ends it.
 */
export function watchWorkbook(changed: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let over = false;
  const later = (work: () => void, wait: number) => {
    clearTimeout(timer);
    if (!over) timer = setTimeout(work, wait);
  };
  let handlers = Promise.resolve<Handlers>([]);
  const begin = () => {
    handlers = register(async () => later(changed, quiet));
    handlers.catch(() => later(begin, patience));
  };
  begin();
  return () => {
    over = true;
    clearTimeout(timer);
    handlers.then(unregister).catch(() => undefined);
  };
}

type Handlers = OfficeExtension.EventHandlerResult<unknown>[];

function register(heard: () => Promise<void>): Promise<Handlers> {
  return Excel.run(async (context) => {
    const { onActivated, onChanged, onCalculated, onSelectionChanged } = context.workbook.worksheets;
    const all = [
      onActivated.add(heard),
      onChanged.add(heard),
      onCalculated.add(heard),
      onSelectionChanged.add(heard),
    ];
    await context.sync();
    return all;
  });
}

async function unregister(handlers: Handlers): Promise<void> {
  for (const handler of handlers) handler.remove();
  await handlers[0]?.context.sync();
}
