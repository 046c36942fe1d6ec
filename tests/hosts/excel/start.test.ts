import { messages } from "../../../src/hosts/excel/messages";
import { whenReady } from "../../../src/hosts/excel/start";
import { currentTheme } from "../../../src/hosts/excel/theme";

interface Page {
  host?: string | null;
  api?: number;
  background?: string;
  prefersDark?: boolean;
}

/** A page with an Office library that says this. */
function page({ host = "Excel", api = 20, background, prefersDark }: Page): void {
  const isSetSupported = (_: string, version: string) => Number(version.split(".")[1]) <= api;
  const officeTheme = background === undefined ? undefined : { bodyBackgroundColor: background };
  Object.assign(globalThis, {
    Office: {
      HostType: { Excel: "Excel" },
      context: { requirements: { isSetSupported }, officeTheme },
      onReady: (ready: (info: object) => void) => Promise.resolve(ready({ host })),
    },
    matchMedia: prefersDark === undefined ? undefined : () => ({ matches: prefersDark }),
  });
}

function started(): string {
  let outcome = "nothing";
  whenReady(
    (host) => (outcome = `started, copies ${host.can.openCopy}`),
    (sentence) => (outcome = sentence),
  );
  return outcome;
}

afterEach(() => {
  Object.assign(globalThis, { Office: undefined, matchMedia: undefined });
});

describe("starting the panel", () => {
  it("hands over the workbook inside Excel", () => {
    page({ api: 14 });
    expect(started()).toBe("started, copies true");
  });

  it.each([
    ["outside Excel", { host: null }, messages.outside],
    ["in another Office program", { host: "Word" }, messages.outside],
    ["in an Excel that is too old", { api: 13 }, messages.oldExcel],
  ])("says why it cannot %s", (_, options, sentence) => {
    page(options);
    expect(started()).toBe(sentence);
  });

  it("says so where the Office library did not load", () => {
    expect(started()).toBe(messages.noLibrary);
  });
});

describe("the theme", () => {
  it.each([
    ["dark where Excel's background is dark", { background: "#1F1F1F" }, "dark"],
    [
      "light where it is light, whatever the system prefers",
      { background: "#FFFFFF", prefersDark: true },
      "light",
    ],
    ["what the system prefers where Excel gives none", { prefersDark: true }, "dark"],
    ["what the system prefers where Excel gives no color", { background: "none", prefersDark: true }, "dark"],
    ["light where the system prefers light", { prefersDark: false }, "light"],
    ["light where nobody says", {}, "light"],
  ])("is %s", (_, options, theme) => {
    page(options);
    expect(currentTheme()).toBe(theme);
  });
});
