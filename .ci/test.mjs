// Runs every test of the project and counts them. All of them run, whatever fails before.

import { readdirSync } from "node:fs";
import { join } from "node:path";
import { build } from "./build.mjs";
import { attempt, root, tee } from "./process.mjs";
import { setup } from "./setup.mjs";

const counts = { passed: 0, failed: 0 };
const broken = [];

/** A check that passes or fails as a whole. */
function check(name, command, args) {
  if (attempt(command, args) === 0) counts.passed += 1;
  else fail(name);
}

function fail(name) {
  counts.failed += 1;
  broken.push(name);
}

/** A test runner; `count` finds what it says it ran, one match a summary: passed, then failed. */
async function runner(name, command, args, count) {
  const { status, text } = await tee(command, args);
  let failed = 0;
  for (const [, passed, more] of text.matchAll(count)) {
    counts.passed += Number(passed);
    failed += Number(more);
  }
  counts.failed += failed;
  if (failed > 0) broken.push(name);
  // A run that broke off before it could count is a failure too.
  else if (status !== 0) fail(name);
}

function files(folder, ending) {
  return readdirSync(join(root, folder), { recursive: true })
    .filter((name) => name.endsWith(ending))
    .map((name) => join(folder, name))
    .sort();
}

await setup({ browsers: true });
check("rustfmt", "cargo", ["fmt", "--all", "--check"]);
check("clippy", "cargo", [
  "clippy",
  "--workspace",
  "--all-targets",
  "--locked",
  "--",
  "-D",
  "warnings",
]);
for (const features of [[], ["--no-default-features"]]) {
  check("clippy for wasm", "cargo", [
    ...["clippy", "-p", "backcut-wasm", "--target", "wasm32-unknown-unknown", "--locked"],
    ...[...features, "--", "-D", "warnings"],
  ]);
}
check("prettier", "prettier", ["--check", "--log-level", "warn", "wasm/js", "tests", ".ci"]);
const CARGO = /^test result: \w+\. (\d+) passed; (\d+) failed/gm;
await runner("cargo test", "cargo", ["test", "--workspace", "--locked", "--no-fail-fast"], CARGO);
await build();
check("types", "tsc", ["-p", "wasm/js"]);
const NODE = /^ℹ pass (\d+)\nℹ fail (\d+)/gm;
const node = ["--test", "--test-timeout=300000", "--test-reporter=spec"];
await runner("wasm tests", "node", [...node, ...files("tests/wasm", ".test.mjs")], NODE);
await runner("package tests", "node", [...node, "tests/packages/consumed.test.mjs"], NODE);
// They wait more than they work: two at a time, on a machine with two processors as well.
const two = "--test-concurrency=2";
await runner("browser tests", "node", [...node, two, ...files("tests/browser", ".test.mjs")], NODE);

if (broken.length > 0) console.log(`Failed: ${broken.join(", ")}`);
console.log(`${counts.passed} passed, ${counts.failed} failed`);
process.exit(counts.failed > 0 ? 1 : 0);
