// The package as others get it: packed, installed, and used by a plain page, by a bundler and by a
// framework that renders on a server; each page is opened in a browser and plays.

import assert from "node:assert/strict";
import { execFileSync, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { fileURLToPath } from "node:url";
import { SET, start } from "../browser/page.mjs";
import { serve } from "../browser/server.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
const pkg = join(here, "../../wasm/pkg");
const tsc = join(here, "../../node_modules/.bin/tsc");
const folder = mkdtempSync(join(tmpdir(), "consumed-"));
const site = join(folder, "site");
let browser;
let tarball;

const npm = (cwd, ...args) =>
  execFileSync("npm", [...args, "--no-audit", "--no-fund", "--silent"], { cwd });

before(async () => {
  npm(pkg, "pack", "--pack-destination", folder);
  tarball = join(
    folder,
    readdirSync(folder).find((name) => name.endsWith(".tgz")),
  );
  cpSync(join(here, "astro"), site, { recursive: true });
  npm(site, "ci");
  npm(site, "install", "--no-save", tarball);
  mkdirSync(join(site, "public"));
  writeFileSync(join(site, "public", "set.json"), JSON.stringify(SET));
  browser = await start();
});

after(async () => {
  await browser?.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** Opens what lies in a folder; what the page complains of, what it asked for, and whether elsewhere. */
async function opened(t, root, path = "/index.html") {
  const server = await serve({}, root);
  t.after(() => server.close());
  const page = await browser.browser.newPage();
  t.after(() => page.close());
  const [problems, fetched] = [[], []];
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) problems.push(message.text());
  });
  page.on("pageerror", (error) => problems.push(String(error)));
  page.on("request", (request) => {
    if (!request.url().startsWith(server.origin)) problems.push(request.url());
    else fetched.push(new URL(request.url()).pathname);
  });
  await page.goto(server.origin + path);
  return { page, problems, fetched };
}

/** It is drawn, and plays. */
async function plays(page) {
  await page.waitForFunction(() => {
    const set = document.querySelector("backcut-set");
    return set.readyState === 4 && set.shadowRoot.querySelector("canvas").width > 0;
  });
  await page.evaluate(() => document.querySelector("backcut-set").play());
  await page.waitForFunction(() => document.querySelector("backcut-set").currentTime > 0.2);
  // What comes later is found too.
  await page.evaluate(() => (document.querySelector("backcut-set").coverage = "switch"));
  await page.waitForFunction(() => document.querySelector("backcut-set").looks !== null);
}

/** A page of the package's own snippet, beside the packed files in a folder by their version. */
function plain(change = (lines) => lines) {
  const root = join(folder, "plain");
  const { version } = JSON.parse(readFileSync(join(pkg, "package.json"), "utf8"));
  const place = join(root, `backcut-${version}`);
  mkdirSync(place, { recursive: true });
  execFileSync("tar", ["xzf", tarball, "-C", place, "--strip-components=1"]);
  const lines = readFileSync(join(place, "snippet.html"), "utf8");
  writeFileSync(join(root, "set.json"), JSON.stringify(SET));
  writeFileSync(
    join(root, "index.html"),
    `<!doctype html><html lang="en"><meta charset="utf-8"><title>Plain</title><link rel="icon" href="set.json">
    ${change(lines)}`,
  );
  return { root, lines, version };
}

test("the snippet names this version, and the hash that its script has", () => {
  const { root, lines, version } = plain();
  const addresses = [...lines.matchAll(/(?:src|href)="([^"]+)"/g)].map(([, address]) => address);
  const own = addresses.filter((address) => address !== "/set.json");
  assert.equal(own.length, 3);
  for (const address of own) {
    assert.ok(address.startsWith(`/backcut-${version}/`), address);
    assert.ok(existsSync(join(root, address)), address);
  }
  const script = readFileSync(join(root, `backcut-${version}`, "backcut.js"));
  const hash = `sha384-${createHash("sha384").update(script).digest("base64")}`;
  const hashes = [...lines.matchAll(/integrity="([^"]+)"/g)].map(([, found]) => found);
  assert.deepEqual(hashes, [hash, hash]);
});

test("a plain page plays it from the packed files by the snippet, each asked for once", async (t) => {
  const { page, problems, fetched } = await opened(t, plain().root);
  await plays(page);
  const own = fetched.filter((path) => path.startsWith("/backcut-"));
  assert.deepEqual(own, [...new Set(own)]);
  assert.deepEqual(problems, []);
});

test("a script that is not the one of the snippet does not run", async (t) => {
  // Another letter, and no other way to write the same one: "_" is "/" to a browser.
  const other = plain((lines) =>
    lines.replaceAll(/(sha384-)(.)/g, (_, lead, first) => lead + (first === "A" ? "B" : "A")),
  );
  const { page, problems } = await opened(t, other.root);
  await page.waitForLoadState("load");
  assert.equal(await page.evaluate(() => customElements.get("backcut-set")), undefined);
  assert.equal(await page.getByRole("link").textContent(), "The set, as a file");
  assert.match(problems.join(), /integrity/);
});

test("a bundler finds every part", async (t) => {
  const { build } = await import(join(site, "node_modules/vite/dist/node/index.js"));
  const app = join(site, "app");
  mkdirSync(join(app, "public"), { recursive: true });
  writeFileSync(join(app, "public", "set.json"), JSON.stringify(SET));
  writeFileSync(join(app, "main.js"), 'import "backcut";\n');
  writeFileSync(
    join(app, "index.html"),
    `<!doctype html><html lang="en"><title>App</title><link rel="icon" href="/set.json">
    <script type="module" src="/main.js"></script><backcut-set src="/set.json"></backcut-set>`,
  );
  await build({ root: app, logLevel: "error", build: { outDir: "dist" } });
  const files = readdirSync(join(app, "dist/assets"));
  for (const part of [/backcut_bg-.*wasm$/, /late-.*js$/, /full-.*js$/, /full_bg-.*wasm$/]) {
    assert.equal(files.filter((name) => part.test(name)).length, 1, `${part}: ${files}`);
  }
  const { page, problems } = await opened(t, join(app, "dist"));
  await plays(page);
  assert.deepEqual(problems, []);
});

for (const [framework, types, good] of [
  ["React", "react", 'import type { JSX } from "react";'],
  ["Preact", "preact", 'import type { JSX } from "preact";'],
]) {
  test(`the JSX of ${framework} knows the tag, and what it takes`, () => {
    const folder = join(site, types);
    mkdirSync(folder);
    const page = (attributes) => `${good}
      import "backcut/${types}";
      export const page = (): JSX.Element => <backcut-set ${attributes}><a href="/set.json">Harbour</a></backcut-set>;\n`;
    const compilerOptions = {
      ...{
        strict: true,
        noEmit: true,
        module: "esnext",
        moduleResolution: "bundler",
        target: "es2022",
      },
      ...{ jsx: "react-jsx", jsxImportSource: types, lib: ["es2023", "dom"], types: [] },
    };
    writeFileSync(join(folder, "tsconfig.json"), JSON.stringify({ compilerOptions }));
    const check = (attributes) => {
      writeFileSync(join(folder, "page.tsx"), page(attributes));
      return spawnSync(tsc, ["-p", folder], { encoding: "utf8" }).stdout;
    };
    assert.equal(check('src="/set.json" mirrored coverage="switch" id="one"'), "");
    assert.match(check("src={3}"), /page\.tsx/);
    assert.match(check('speed="2"'), /page\.tsx/);
  });
}

test("a framework renders its tag on the server, and the page plays it", async (t) => {
  execFileSync("node", ["node_modules/astro/astro.js", "build", "--silent"], {
    cwd: site,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: "1" },
    stdio: ["ignore", "ignore", "inherit"],
  });
  const html = readFileSync(join(site, "dist/index.html"), "utf8");
  assert.match(
    html,
    /<backcut-set src="\/set\.json"><a href="\/set\.json">Harbour, a set play<\/a>/,
  );
  const wasm = /rel="preload"[^>]+href="(\/_astro\/[^"]+\.wasm)"/.exec(html)?.[1];
  assert.ok(wasm, html);
  const { page, problems, fetched } = await opened(t, join(site, "dist"));
  await plays(page);
  // What was asked for ahead is what is used.
  const files = fetched.filter((path) => /backcut_bg.*\.wasm$/.test(path));
  assert.deepEqual([...new Set(files)], [wasm]);
  assert.deepEqual(problems, []);
});
