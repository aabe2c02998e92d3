// Running other programs from the scripts of this folder.

import { spawn, spawnSync } from "node:child_process";
import { accessSync, constants } from "node:fs";
import { delimiter, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The project's folder. */
export const root = dirname(dirname(fileURLToPath(import.meta.url)));
/** Where the wasm tools are installed. */
export const tools = join(root, ".tools", "bin");

const path = [tools, join(root, "node_modules", ".bin"), process.env.PATH ?? ""].join(delimiter);

/** The full path of a command, or nothing. */
export function find(command) {
  for (const folder of path.split(delimiter)) {
    try {
      accessSync(join(folder, command), constants.X_OK);
      return join(folder, command);
    } catch {
      // Not in this folder.
    }
  }
  return undefined;
}

/** What a command prints, trimmed, or nothing where it fails or is not there. */
export function output(command, args) {
  const done = spawnSync(command, args, {
    cwd: root,
    encoding: "utf8",
    env: { ...process.env, PATH: path },
  });
  return done.status === 0 ? done.stdout.trim() : undefined;
}

/** Runs a command with its output shown; ends the script where it fails. */
export function run(command, args, env = {}) {
  const status = attempt(command, args, env);
  if (status !== 0) process.exit(status);
}

/** Runs a command with its output shown; its exit status. */
export function attempt(command, args, env = {}) {
  console.log(`> ${[command, ...args].join(" ")}`);
  const done = spawnSync(command, args, {
    cwd: root,
    stdio: "inherit",
    env: { ...process.env, PATH: path, ...env },
  });
  if (done.error) console.error(`${command}: ${done.error.message}`);
  return done.status ?? 1;
}

/** Runs a command beside others; ends the script where it fails. */
export async function start(command, args, env = {}) {
  const { status } = await tee(command, args, env);
  if (status !== 0) process.exit(status);
}

/** Runs a command with its output shown and kept. */
export async function tee(command, args, env = {}) {
  console.log(`> ${[command, ...args].join(" ")}`);
  const child = spawn(command, args, {
    cwd: root,
    env: { ...process.env, PATH: path, ...env },
    stdio: ["ignore", "pipe", "inherit"],
  });
  let text = "";
  child.stdout.setEncoding("utf8");
  child.stdout.on("data", (part) => {
    text += part;
    process.stdout.write(part);
  });
  const status = await new Promise((resolve) => {
    child.on("error", () => resolve(1));
    child.on("close", (code) => resolve(code ?? 1));
  });
  return { status, text };
}
