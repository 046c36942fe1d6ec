import { readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import CopyPlugin from "copy-webpack-plugin";
import CustomFunctionsMetadataPlugin from "custom-functions-metadata-plugin";
import HtmlPlugin from "html-webpack-plugin";
import MiniCssExtractPlugin from "mini-css-extract-plugin";
import TerserPlugin from "terser-webpack-plugin";
import { tsImport } from "tsx/esm/api";
import webpack from "webpack";

const developmentHost = "https://localhost:3000";
const here = path.dirname(fileURLToPath(import.meta.url));

/** Completes functions.json for the host and writes a help page for every function from the same metadata. */
class FunctionsHelpPlugin {
  constructor(host) {
    this.host = host;
  }
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("FunctionsHelp", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONS;
      compilation.hooks.processAssets.tapPromise({ name: "FunctionsHelp", stage }, async () => {
        const { finishMetadata } = await tsImport("./functions/metadata.ts", import.meta.url);
        const { helpPages } = await tsImport("./functions/help.ts", import.meta.url);
        const raw = JSON.parse(String(compilation.getAsset("functions.json").source.source()));
        const metadata = finishMetadata(raw, this.host);
        compilation.updateAsset(
          "functions.json",
          new webpack.sources.RawSource(JSON.stringify(metadata, null, 2)),
        );
        for (const { file, html } of helpPages(metadata))
          compilation.emitAsset(`help/${file}`, new webpack.sources.RawSource(html));
      });
    });
  }
}

const page = (name, chunks, options = {}) =>
  new HtmlPlugin({ template: `${name}.html`, filename: `${path.basename(name)}.html`, chunks, ...options });

export default (env, { mode }) => {
  const host = (env.host ?? developmentHost).replace(/\/+$/, "");
  if (!/^https:\/\/[^\s"<>]+$/.test(host))
    throw new Error(`--env host= takes an https address, not "${env.host}".`);
  const production = mode === "production";
  const common = {
    mode: mode ?? "production",
    context: here,
    devtool: production ? false : "source-map",
    output: { path: path.join(here, "dist"), filename: "[name].js", chunkFilename: "[name].js" },
    resolve: { extensions: [".ts", ".js"] },
    module: {
      rules: [
        { test: /\.ts$/, loader: "ts-loader", options: { transpileOnly: true }, exclude: /node_modules/ },
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
      ],
    },
    optimization: {
      minimizer: [new TerserPlugin({ minify: TerserPlugin.swcMinify, extractComments: false })],
    },
    // The grid of the browser workbook is large by itself; the bars of this project's own bundles are in the benchmark.
    performance: { hints: false },
    stats: "errors-warnings",
  };
  return [
    {
      ...common,
      name: "functions",
      entry: { functions: "./functions/functions.ts" },
      plugins: [
        new CustomFunctionsMetadataPlugin({ output: "functions.json", input: "./functions/functions.ts" }),
        new FunctionsHelpPlugin(host),
        page("functions/functions", ["functions"], { scriptLoading: "blocking", inject: "body" }),
        new CopyPlugin({
          patterns: [
            {
              from: "manifest.xml",
              transform: () => readFileSync("manifest.xml", "utf8").replaceAll(developmentHost, host),
            },
            { from: "taskpane/icons/*.png", to: "icons/[name][ext]" },
            { from: "functions/help.css", to: "help/help.css" },
          ],
        }),
      ],
    },
    {
      ...common,
      name: "pages",
      entry: { taskpane: "./taskpane/taskpane.ts", workbook: "./taskpane/workbook.ts" },
      devServer: {
        host: "localhost",
        port: 3010,
        hot: false,
        liveReload: false,
        client: { overlay: false },
        open: process.env.CI ? false : ["/workbook.html"],
        static: false,
      },
      plugins: [
        // Hyphenation of other languages, which the grid asks for in none of our pages: 70 files of several megabytes.
        new webpack.IgnorePlugin({
          resourceRegExp: /^\.\/(?!en-gb-)[a-z-]+(-\d+)?-[\w-]{8}\.js$/,
          contextRegExp: /@univerjs.engine-render.lib.es$/,
        }),
        new MiniCssExtractPlugin({ filename: "[name].css" }),
        page("taskpane/taskpane", ["taskpane"]),
        page("taskpane/workbook", ["workbook"]),
      ],
    },
  ];
};
