import { existsSync, statSync } from "node:fs";
import { spawnSync } from "node:child_process";

// What a fresh clone needs before anything else: the packages of the lock file, installed once and again when it changes.
const installed = "node_modules/.package-lock.json";
const current = existsSync(installed) && statSync(installed).mtimeMs >= statSync("package-lock.json").mtimeMs;
if (!current) {
  console.log("Installing the packages of package-lock.json (npm ci) …");
  const { status } = spawnSync("npm", ["ci", "--no-audit", "--no-fund"], {
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  if (status !== 0) {
    console.error(
      "npm ci failed: the lines above say why. A working network and Node 20 or later are needed.",
    );
    process.exit(status ?? 1);
  }
}
