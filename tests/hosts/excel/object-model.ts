import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import vm from "node:vm";

/** What a request to Excel holds, as the Office library of the pinned version sends it. */
export interface Request {
  Actions: RequestAction[];
  ObjectPaths: Record<string, ObjectPath>;
}

export interface RequestAction {
  Id: number;
  ActionType: number;
  Name: string;
  ObjectPathId: number;
  ArgumentInfo?: ObjectPath["ArgumentInfo"];
  QueryInfo?: { Select: string[] };
}

export interface ObjectPath {
  Id: number;
  ObjectPathType: number;
  Name: string;
  ParentObjectPathId?: number;
  ArgumentInfo?: { Arguments: unknown[]; ReferencedObjectPathIds?: (number | null)[] };
}

export interface Reply {
  ErrorCode: string;
  ErrorMessage: string;
  Headers: object;
  Body: { Results: { ActionId: number; Value: unknown }[]; TraceIds: number[]; Error?: object };
}

/** The library's own names, and its two doors for tests of events. */
export interface ObjectModel {
  Excel: typeof Excel;
  Office: typeof Office;
  OfficeExtension: {
    _testSetRichApiMessageReadyImpl(ready: () => Promise<void>): void;
    _testTriggerRichApiMessageEvent(message: object): void;
  };
}

const library = "@microsoft/office-js/dist/excel-web-16.00.js";
let script: vm.Script | undefined;

/** Loads Excel's real object model into a bare page of its own; every request goes to `execute`. */
export function loadObjectModel(execute: (request: Request) => Promise<Reply>): ObjectModel {
  script ??= new vm.Script(
    readFileSync(createRequire(path.resolve("package.json")).resolve(library), "utf8"),
  );
  const page = barePage();
  vm.createContext(page);
  script.runInContext(page);
  const model = page as unknown as ObjectModel;
  Object.assign(model.Excel.RequestContext.prototype, {
    _requestExecutor: {
      executeAsync: (_: unknown, __: number, { Body }: { Body: Request }) => execute(Body),
    },
  });
  return model;
}

function barePage(): Record<string, unknown> {
  const nothing = () => undefined;
  const element = () => ({ style: {}, setAttribute: nothing, appendChild: nothing });
  const storage = { getItem: () => null, setItem: nothing };
  const location = {
    href: "https://localhost/",
    search: "",
    hash: "",
    host: "localhost",
    protocol: "https:",
  };
  const page: Record<string, unknown> = {
    console, setTimeout, clearTimeout, Promise, performance, location, Office: {},
    addEventListener: nothing, removeEventListener: nothing, postMessage: nothing,
    sessionStorage: storage, localStorage: storage,
    navigator: { userAgent: "", language: "en-US", platform: "" },
    document: {
      createElement: element, getElementsByTagName: () => [], getElementById: () => null, addEventListener: nothing,
      body: element(), head: element(), URL: location.href, cookie: "", location,
    },
  }; // prettier-ignore
  return Object.assign(page, { window: page, self: page, top: page, parent: page });
}
