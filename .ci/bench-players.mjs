// Measures general-purpose animation players and ours side by side. No test depends on it.

import { join } from "node:path";
import { build } from "./build.mjs";
import { root, run } from "./process.mjs";
import { browser, setup } from "./setup.mjs";

await setup({ browsers: true });
await build();
run("npm", ["ci", "--silent", "--prefix", join(root, "tests/benches/players")]);
const { compare } = await import("../tests/benches/players/run.mjs");
await compare(browser("Chromium"));
