// Builds everything and serves the demo site on a local address.

import { build } from "./build.mjs";
import { run } from "./process.mjs";
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

setup();
await build();
run("cargo", [...tool, "site", "web-demo", OUT]);
run("cargo", [...tool, "serve", OUT]);
