import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createServer, type Server } from "node:http";
import { type AddressInfo } from "node:net";
import { extname, join, resolve } from "node:path";
import { chromium, type Browser, type BrowserContext, type Page } from "playwright-core";
import { type Started } from "../../../src/hosts/browser/start";

declare global {
  interface Window {
    penstake: Started;
    /** What the page has sent to the printer, each as a whole document. */
    printed: string[];
  }
}

/** Debian's Chromium, or another one that the environment names. */
export const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";
const args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-background-networking"];
/** The build, from the top of the project, where npm runs everything. */
const dist = resolve(process.env.PENSTAKE_DIST ?? "dist");
const types: Record<string, string> = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css", ".json": "application/json", ".png": "image/png" }; // prettier-ignore

/** A browser with the built pages served to it, for the tests of one file. */
export interface Pages {
  /** A new user's browser: nothing kept, no tab open. */
  newUser(): Promise<BrowserContext>;
  /** Opens the workbook page and waits until it is up. */
  open(user: BrowserContext, page?: Page): Promise<Page>;
  /** What went wrong in any page so far: console errors, exceptions, requests to another origin. */
  faults: string[];
  close(): Promise<void>;
}

/** Serves the build on this machine alone and starts the browser. */
export async function startPages(): Promise<Pages> {
  if (!existsSync(join(dist, "workbook.html")))
    throw new Error("dist/workbook.html is missing: run npm run build");
  const server = await serve();
  const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const browser = await chromium.launch({ executablePath, args });
  const faults: string[] = [];
  return {
    newUser: () => newUser(browser, origin, faults),
    open: async (user, page) => {
      const opened = page ?? (await user.newPage());
      await opened.goto(`${origin}/workbook.html`);
      await opened.waitForFunction(() => window.penstake !== undefined, undefined, { timeout: 60_000 });
      return opened;
    },
    faults,
    close: async () => {
      await browser.close();
      await new Promise((done) => server.close(done));
    },
  };
}

async function newUser(browser: Browser, origin: string, faults: string[]): Promise<BrowserContext> {
  const user = await browser.newContext({ viewport: { width: 1400, height: 850 }, acceptDownloads: true });
  user.on("console", (message) => {
    if (message.type() === "error") faults.push(`console: ${message.text()}`);
  });
  user.on("weberror", (error) => faults.push(`exception: ${error.error().message}`));
  user.on("request", (request) => {
    const { protocol, origin: to } = new URL(request.url());
    if (/^https?:$/.test(protocol) && to !== origin) faults.push(`request: ${request.url()}`);
  });
  // No printer stands behind this browser: what would go to it is kept instead.
  await user.addInitScript(() => {
    window.print = () => {
      (window.top!.printed ??= []).push(`<!doctype html>${document.documentElement.outerHTML}`);
      window.dispatchEvent(new Event("afterprint"));
    };
  });
  return user;
}

function serve(): Promise<Server> {
  const server = createServer((request, response) => {
    const path = join(dist, new URL(request.url!, "http://127.0.0.1").pathname);
    readFile(path).then(
      (content) => {
        response.writeHead(200, { "content-type": types[extname(path)] ?? "application/octet-stream" });
        response.end(content);
      },
      () => response.writeHead(404).end(),
    );
  });
  return new Promise((listening) => server.listen(0, "127.0.0.1", () => listening(server)));
}
