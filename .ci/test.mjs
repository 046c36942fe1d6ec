import { spawnSync } from "node:child_process";

// The browser tests look at the built pages, so the build comes first; CI has just made it.
const run = (command, ...words) => {
  const { status } = spawnSync(command, words, { stdio: "inherit", shell: process.platform === "win32" });
  if (status !== 0) process.exit(status ?? 1);
};
if (!process.env.PENSTAKE_BUILT) run("npm", "run", "build");
run("npx", "jest", ...process.argv.slice(2));
