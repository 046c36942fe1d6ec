import { excelHost, type ExcelHost } from "../../../src/hosts/excel/excel-host";
import { type Painter } from "../../../src/hosts/svg-to-png";
import { ActionFailure, methods, ways, type Target, type Workbook } from "./actions";
import { newSheet } from "./memory";
import { propertyOf, setProperty } from "./properties";
import { itemsOf } from "./whole-sheets";
import {
  loadObjectModel,
  type ObjectModel,
  type ObjectPath,
  type Reply,
  type Request,
  type RequestAction,
} from "./object-model";

/** A place at which a request fails: which request from now on, which of its actions, and Excel's code for it. */
export interface Fault {
  request: number;
  action: number;
  code: string;
  /** From this action on, nothing is answered any more. */
  silent?: boolean;
}

/** How the stand-in behaves. */
export interface Behavior {
  /** The newest set of requests that it says it has, such as 14 for ExcelApi 1.14. */
  api?: number;
  /** Names of the sheets it begins with; the first is shown. */
  sheets?: string[];
  /** Whether a group of undo steps is taken. */
  groups?: boolean;
  /** What draws pictures; without it each is handed on as the SVG that it is. */
  paint?: Painter;
}

/** The stand-in, the host that works on it, and what it has counted. */
export interface CountingWorkbook {
  host: ExcelHost;
  book: Workbook;
  model: ObjectModel;
  /** Round trips and bytes sent since the beginning or since `reset`. */
  trips(): number;
  bytes(): number;
  /** How many actions each request held. */
  sizes: number[];
  reset(): void;
  fail(fault: Fault | undefined): void;
  /** The options of every Excel.run. */
  runs: object[];
}

/**
 * Excel's real object model over a workbook in memory. It knows only the actions that the adapter sends, runs a
 * request up to the action that fails, and makes Excel and Office global as a page has them.
 */
export function countingWorkbook({
  api = 20,
  sheets = ["Sheet1"],
  groups = true,
  paint = standInPaint,
}: Behavior = {}): CountingWorkbook {
  const stored = sheets.map(newSheet);
  const book: Workbook = { sheets: stored, active: stored[0], selected: { row: 0, column: 0 }, opened: [] };
  const sizes: number[] = [];
  const runs: object[] = [];
  let [bytes, grouping] = [0, false];
  let fault: Fault | undefined;
  const model = loadObjectModel(async (request) => {
    const wanted = fault?.request === sizes.length ? fault : undefined;
    sizes.push(request.Actions.length);
    bytes += Buffer.byteLength(JSON.stringify(request));
    if (fault?.silent && sizes.length - 1 > fault.request) throw new Error("no answer");
    const reply = perform(
      book,
      request,
      grouping && !groups ? { action: 3, code: "UndoNotSupported" } : wanted,
    );
    if (wanted?.silent) throw new Error("no answer");
    return reply;
  });
  const run = model.Excel.run.bind(model.Excel) as (...given: unknown[]) => Promise<unknown>;
  Object.assign(model.Excel, {
    run: async (...given: unknown[]) => {
      const options: Excel.RunOptions = typeof given[0] === "object" ? { ...given[0] } : {};
      delete options.previousObjects;
      runs.push(options);
      grouping = options.mergeUndoGroup === true;
      return run(...given).finally(() => (grouping = false));
    },
  });
  model.OfficeExtension._testSetRichApiMessageReadyImpl(async () => undefined);
  const isSetSupported = (_: string, version = "1.1") => Number(version.split(".")[1]) <= api;
  Object.assign(globalThis, {
    Excel: model.Excel,
    Office: { context: { requirements: { isSetSupported } } },
  });
  const reset = () => {
    sizes.length = runs.length = bytes = 0;
  };
  const host = excelHost(paint);
  reset();
  return { host, book, model, sizes, runs, reset, trips: () => sizes.length, bytes: () => bytes, fail: (next) => { fault = next; } }; // prettier-ignore
}

const standInPaint: Painter = async (svg) => {
  if (!svg.startsWith("<svg")) throw new Error("The source image cannot be decoded.");
  return Buffer.from(svg).toString("base64");
};

function perform(book: Workbook, request: Request, fault?: { action: number; code: string }): Reply {
  const targets = new Map<number, Target | undefined>();
  const Results: Reply["Body"]["Results"] = [];
  const TraceIds: number[] = [];
  const reply = (error?: object): Reply => ({
    ErrorCode: "",
    ErrorMessage: "",
    Headers: {},
    Body: { Results, TraceIds, ...(error && { Error: error }) },
  });
  for (const [index, action] of request.Actions.entries()) {
    try {
      if (fault?.action === index) throw new ActionFailure(fault.code);
      if (action.ActionType === 5) TraceIds.push(action.Id);
      Results.push({ ActionId: action.Id, Value: act(book, request, targets, action) });
    } catch (error) {
      if (!(error instanceof ActionFailure)) throw error;
      return reply({ Code: error.code, Message: error.message, ActionIndex: index, Location: "" });
    }
  }
  return reply();
}

function act(
  book: Workbook,
  request: Request,
  targets: Map<number, Target | undefined>,
  action: RequestAction,
): unknown {
  const { ActionType, Name, ObjectPathId, ArgumentInfo, QueryInfo } = action;
  const unknown = (what: string): never => {
    throw new ActionFailure(`The stand-in does not know ${what}.`);
  };
  if (ActionType === 5) return null;
  if (ActionType === 1) {
    if (!targets.has(ObjectPathId)) targets.set(ObjectPathId, follow(book, request, targets, ObjectPathId));
    return reference(targets.get(ObjectPathId));
  }
  const target = targets.get(ObjectPathId);
  if (!target) return null;
  const given = argumentsOf(targets, ArgumentInfo);
  if (ActionType === 2) {
    if (target.kind === "Worksheets")
      return { _Items: book.sheets.map(({ name }) => ({ _Id: name, Name: name })) };
    const items = itemsOf(target);
    if (items) return { _Items: items };
    const asked = QueryInfo!.Select.map((name) => [
      name[0].toUpperCase() + name.slice(1),
      propertyOf(target, name),
    ]);
    return Object.fromEntries(
      asked.map((pair) => (pair[1] === undefined ? unknown(`${target.kind}.${pair[0]}`) : pair)),
    );
  }
  if (ActionType === 3)
    return (
      (methods[`${target.kind}.${Name}`] ?? unknown(`${target.kind}.${Name}()`))(book, target, given) ?? null
    );
  if (ActionType !== 4) unknown(`an action of type ${ActionType}`);
  else if (!setProperty(book, target, Name, given[0])) unknown(`${target.kind}.${Name} =`);
  return null;
}

/** What Excel tells of an object that it made or found: null for none, and for some an id to find it by later. */
function reference(target: Target | undefined): object | null {
  if (!target) return null;
  if (target.kind === "Worksheet") return { _Id: target.sheet.name };
  return target.picture ? { _Id: String(target.sheet.pictures.indexOf(target.picture)) } : {};
}

function follow(
  book: Workbook,
  { ObjectPaths }: Request,
  targets: Map<number, Target | undefined>,
  id: number,
): Target | undefined {
  const { ObjectPathType, Name, ParentObjectPathId, ArgumentInfo } = ObjectPaths[id];
  if (ObjectPathType === 1) return { kind: "Workbook", sheet: book.active, areas: [] };
  const parent = targets.get(ParentObjectPathId!);
  if (!parent) return undefined;
  const way = `${parent.kind}.${Name || "GetItem"}`;
  const step = ways[way];
  if (!step) throw new ActionFailure(`The stand-in does not know ${way}.`);
  return step(book, parent, argumentsOf(targets, ArgumentInfo));
}

/** What a request was given, with the objects that it names in the place of their ids. */
function argumentsOf(targets: Map<number, Target | undefined>, info: ObjectPath["ArgumentInfo"]): unknown[] {
  const named = info?.ReferencedObjectPathIds ?? [];
  return (info?.Arguments ?? []).map((given, k) => targets.get(named[k] ?? 0) ?? given);
}
