// Builds ../wwwroot/lib/chart.js and writes the hash of what it was built from beside it; a test compares the two.
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync, mkdirSync } from "node:fs";
import { build } from "esbuild";

const sources = ["build.mjs", "chart.mjs", "option.mjs", "package-lock.json"];
const out = "../wwwroot/lib/chart.js";
mkdirSync("../wwwroot/lib", { recursive: true });
await build({
  entryPoints: ["chart.mjs"], bundle: true, minify: true, format: "esm", target: ["es2022"], outfile: out,
  legalComments: "none", charset: "utf8",
  banner: { js: "/* Built from ClientSrc by `npm ci && npm run build`. Holds Apache ECharts 6.1.0 (Apache-2.0) and zrender (BSD-3-Clause). */" },
});
const hash = createHash("sha256");
for (const name of [...sources.map(source => source), out]) hash.update(readFileSync(name, "utf8").replaceAll("\r\n", "\n"));
writeFileSync("../wwwroot/lib/chart.sha256", `${hash.digest("hex")}\n`);
