import eslint from "@eslint/js";
import tseslint from "typescript-eslint";

// Rooms from the ground up: each may import only the rooms named beside it.
const floor = ["units", "geometry"];
const trade = [...floor, "fence", "ground", "site"];
const may = {
  units: [],
  geometry: ["units"],
  fence: floor,
  ground: floor,
  site: floor,
  estimate: trade,
  sheets: [...trade, "estimate", "drawing"],
  drawing: [...trade, "estimate"],
  "hosts/excel": [...trade, "estimate", "sheets", "drawing"],
  "hosts/browser": [...trade, "estimate", "sheets", "drawing"],
  "hosts/xlsx": [...trade, "estimate", "sheets", "drawing"],
  functions: trade,
};
const rooms = ["units", "geometry", "fence", "ground", "site", "estimate", "sheets", "drawing"];
const officeApi = ["Office", "Excel", "OfficeExtension", "OfficeRuntime"];

function imports(room, allowed) {
  const closed = rooms.filter((name) => name !== room && !allowed.includes(name));
  const patterns = closed.map((name) => ({
    group: [`**/${name}/*`],
    message: `${room} may not import ${name}.`,
  }));
  if (room !== "taskpane") {
    patterns.push({ group: ["**/taskpane/*"], message: "Only the panel imports the panel." });
    if (!room.startsWith("hosts"))
      patterns.push({ group: ["**/hosts/*", "**/hosts/*/*"], message: "Only the panel imports hosts." });
    if (room !== "functions")
      patterns.push({ group: ["**/functions/*"], message: `${room} may not import functions.` });
  }
  if (room.startsWith("hosts"))
    for (const other of ["excel", "browser", "xlsx"])
      if (!room.endsWith(other))
        patterns.push({ group: [`**/${other}/*`], message: "A host knows no other host." });
  if (room !== "hosts/browser")
    patterns.push({
      group: ["@univerjs/*", "@univerjs/**"],
      message: "Only hosts/browser knows the grid library.",
    });
  if (room !== "hosts/xlsx")
    patterns.push({ group: ["exceljs", "jszip"], message: "Only hosts/xlsx knows the file library." });
  if (["functions", ...trade].includes(room))
    patterns.push({ group: ["decimal.js"], message: "Money stays out of the functions." });
  return ["error", { patterns }];
}

export default tseslint.config(
  { ignores: ["dist/", "node_modules/", "tests/output/"] },
  eslint.configs.recommended,
  ...tseslint.configs.recommended,
  {
    files: ["**/*.ts"],
    rules: {
      "no-restricted-globals": [
        "error",
        ...officeApi.map((name) => ({ name, message: "Only hosts/excel names the Office API." })),
      ],
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports" }],
    },
  },
  ...Object.entries(may).map(([room, allowed]) => ({
    files: [room === "functions" ? "functions/**/*.ts" : `src/${room}/**/*.ts`],
    rules: { "no-restricted-imports": imports(room, allowed) },
  })),
  { files: ["src/hosts/*.ts"], rules: { "no-restricted-imports": imports("hosts", rooms) } },
  { files: ["taskpane/**/*.ts"], rules: { "no-restricted-imports": imports("taskpane", [...rooms]) } },
  { files: ["src/hosts/excel/**/*.ts"], rules: { "no-restricted-globals": "off" } },
  { files: ["tests/**/*.ts"], rules: { "no-restricted-globals": "off" } },
  // The metadata generator of custom functions takes no narrower type for a cell than any.
  { files: ["functions/functions.ts"], rules: { "@typescript-eslint/no-explicit-any": "off" } },
  {
    files: ["**/*.mjs"],
    languageOptions: {
      globals: {
        process: "readonly",
        console: "readonly",
        URL: "readonly",
        setTimeout: "readonly",
        Buffer: "readonly",
      },
    },
  },
);
