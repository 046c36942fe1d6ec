// Serves the built add-in over https on this machine, for Excel, and says how to add it there.
import { spawnSync } from "node:child_process";
import { createReadStream, existsSync, readFileSync, statSync } from "node:fs";
import { createServer } from "node:https";
import path from "node:path";
import { developmentCertificate } from "./certificate.mjs";

const folder = path.resolve(process.argv[2] ?? "dist");
const manifest = path.join(folder, "manifest.xml");

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".map": "application/json; charset=utf-8",
  ".xml": "text/xml; charset=utf-8",
  ".png": "image/png",
  ".svg": "image/svg+xml",
};

function stop(sentence) {
  console.error(sentence);
  process.exit(1);
}

function build() {
  console.log("Building the add-in first (npm run build) …");
  const { status } = spawnSync("npm", ["run", "build"], {
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  if (status !== 0 || !existsSync(manifest)) stop("The build failed: the lines above say why.");
}

/** The address that the built manifest names; only one on this machine can be served from here. */
function builtAddress() {
  const address = /<SourceLocation DefaultValue="([^"]+)"/.exec(readFileSync(manifest, "utf8"))?.[1];
  const { hostname, port, origin } = new URL(address);
  if (hostname !== "localhost")
    stop(`${manifest} is made for ${origin}. Run npm run build for this machine, or serve the folder there.`);
  return { origin, port: Number(port || 443) };
}

/** The file for a request: one inside the folder, or undefined. */
function fileFor(url) {
  const asked = decodeURIComponent(new URL(url, "https://localhost").pathname);
  const file = path.join(folder, asked);
  return file.startsWith(folder + path.sep) && existsSync(file) && statSync(file).isFile() ? file : undefined;
}

function answer({ url, method }, response) {
  let file;
  try {
    file = fileFor(url);
  } catch {
    response.writeHead(400).end();
    return;
  }
  // Excel on the web reads the functions' description from a page of its own.
  const headers = { "Access-Control-Allow-Origin": "*", "Cache-Control": "no-store" };
  if (method !== "GET" && method !== "HEAD") response.writeHead(405, { Allow: "GET, HEAD" }).end();
  else if (!file) response.writeHead(404, headers).end("Not found");
  else {
    response.writeHead(200, {
      ...headers,
      "Content-Type": types[path.extname(file)] ?? "application/octet-stream",
    });
    if (method === "HEAD") response.end();
    else createReadStream(file).pipe(response);
  }
}

const howTo = (origin, missing) => `
Penstake is served at ${origin}. Leave this window open; Ctrl+C ends it.
${
  missing === undefined
    ? "This machine trusts its certificate."
    : `Missing: this machine does not trust the certificate yet, so Excel will not load the add-in.
To trust it:  ${missing}
For a first look in a browser, open ${origin}/taskpane.html and accept the warning.`
}

Add it to Excel:
  Windows  Share the folder ${folder} on the network (Properties, Sharing). In Excel: File, Options, Trust Center,
           Trust Center Settings, Trusted Add-in Catalogs: add the share's path and tick Show in Menu. Restart
           Excel, then Home, Add-ins, More Add-ins, Shared Folder, Penstake.
  Mac      Copy ${manifest} to ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef
           (make the folder if it is missing). Restart Excel, then Home, Add-ins, Penstake.
  Web      Open a workbook in the browser on this machine: Home, Add-ins, More Add-ins, My Add-ins,
           Upload My Add-in, then choose ${manifest}.
Then choose Pen estimate on the Home tab, or type =PEN. in a cell.`;

if (!existsSync(manifest)) build();
const { origin, port } = builtAddress();
const { options, missing } = await developmentCertificate();
createServer(options, answer)
  .on("error", ({ code, message }) =>
    stop(
      code === "EADDRINUSE"
        ? `Port ${port} is taken by another program: end it, then run npm run excel again.`
        : message,
    ),
  )
  .listen(port, "localhost", () => console.log(howTo(origin, missing)));
