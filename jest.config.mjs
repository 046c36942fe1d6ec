export default {
  testEnvironment: "node",
  roots: ["<rootDir>/tests"],
  testMatch: ["**/*.test.ts"],
  transform: {
    "\\.(t|j|mj)s$": [
      "@swc/jest",
      { jsc: { target: "es2022", parser: { syntax: "typescript", decorators: true } } },
    ],
  },
  transformIgnorePatterns: ["node_modules/(?!(lit|lit-html|lit-element|@lit|astronomy-engine|d3-polygon)/)"],
  testTimeout: 120_000,
  maxWorkers: "100%",
};
