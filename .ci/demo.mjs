// Builds everything and serves the demo site on a local address.

import { build } from "./build.mjs";
import { attempt, run } from "./process.mjs";
import { setup } from "./setup.mjs";

const OUT = "web-demo/site-out";
const tool = [
  "run",
  "--release",
  "--locked",
  "--quiet",
  "-p",
  "backcut-demo",
  "--bin",
  "backcut",
  "--",
];

await setup();
await build();
run("cargo", [...tool, "site", "web-demo", OUT]);
// Its usual port may be taken by another copy; then any.
if (attempt("cargo", [...tool, "serve", OUT]) !== 0) {
  run("cargo", [...tool, "serve", OUT, "--port", "0"]);
}
