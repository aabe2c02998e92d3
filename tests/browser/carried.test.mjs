// The page that `backcut page` makes: one file that carries all it needs. It is opened from disk with
// the network off.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { fileURLToPath, pathToFileURL } from "node:url";
import { chromium as playwright } from "playwright-core";
import { launch } from "puppeteer-core";
import { executable } from "./page.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
const TOOL = join(process.env.CARGO_TARGET_DIR ?? join(root, "target"), "debug", "backcut");
const sets = (name) => join(root, "web-demo", "sets", `${name}.json`);

let folder;
let chromium;
before(async () => {
  folder = mkdtempSync(join(tmpdir(), "backcut-page-"));
  // As the tests in Rust build it: built by itself, half of it would be compiled anew.
  execFileSync("cargo", ["test", "--quiet", "--locked", "--workspace", "--no-run"], { cwd: root });
  chromium = await playwright.launch({
    executablePath: executable("Chromium"),
    args: ["--no-sandbox", "--disable-gpu"],
  });
});
after(async () => {
  await chromium?.close();
  rmSync(folder, { recursive: true });
});

/** Makes the page and tells its address. */
function made(name, ...words) {
  const out = join(folder, name);
  execFileSync(TOOL, ["page", ...words, "-o", out], { cwd: root });
  return pathToFileURL(out).href;
}

/** The page in Chromium, its network off; `problems` has complaints and whatever it asked for. */
async function open(t, address, options = {}, prepare = () => {}) {
  const context = await chromium.newContext({
    viewport: { width: 820, height: 1200 },
    offline: true,
    ...options,
  });
  t.after(() => context.close());
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  const problems = [];
  page.on("console", (message) => {
    if (message.text().includes("getImageData")) return;
    if (["error", "warning"].includes(message.type())) problems.push(message.text());
  });
  page.on("pageerror", (error) => problems.push(String(error)));
  page.on("request", (request) => {
    if (!/^(file|data):/.test(request.url())) problems.push(`asks for ${request.url()}`);
  });
  await page.addInitScript(prepare);
  await page.goto(address);
  return { page, problems };
}

/** Runs in a page: plays, seeks, puts five defenders on the floor, and tells how that went. */
async function tried() {
  const set = document.querySelector("backcut-set");
  await set.ready;
  const canvases = () => [...set.shadowRoot.querySelectorAll(".court canvas")];
  const painted = () =>
    canvases().every((canvas) => {
      const { data } = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height);
      return data.some((byte) => byte !== 0);
    });
  const once = (name) =>
    new Promise((resolve) => set.addEventListener(name, resolve, { once: true }));
  // It is open before it is seen to be near, and painted.
  while (!painted()) await new Promise((done) => requestAnimationFrame(done));
  await set.play();
  while (set.currentTime < 0.2) await once("timeupdate");
  set.pause();
  set.currentTime = 2.5;
  const seeked = set.frame[0];
  set.coverage = "switch";
  while (set.looks === null) await new Promise((done) => requestAnimationFrame(done));
  const looks = set.looks.length;
  const poster = set.querySelector("svg").getBoundingClientRect().height;
  return { seeked, defended: looks > 0, poster };
}

const WELL = { seeked: 2.5, defended: true, poster: 0 };

test("from disk, without a network, it plays, seeks and shows the defence in Chromium", async (t) => {
  const { page, problems } = await open(t, made("one.html", sets("turnstile")));
  assert.deepEqual(await page.evaluate(tried), WELL);
  assert.equal(await page.title(), "Turnstile");
  assert.deepEqual(problems, []);
});

test("from disk, without a network, it plays, seeks and shows the defence in Firefox", async (t) => {
  // Nothing listens on the discard port, and nothing goes past the proxy.
  const dead = { "network.proxy.type": 1, "network.proxy.allow_hijacking_localhost": true };
  for (const kind of ["http", "ssl"]) {
    dead[`network.proxy.${kind}`] = "127.0.0.1";
    dead[`network.proxy.${kind}_port`] = 9;
  }
  const firefox = await launch({
    browser: "firefox",
    executablePath: executable("Firefox"),
    headless: true,
    extraPrefsFirefox: dead,
  });
  t.after(() => firefox.close());
  const page = await firefox.newPage();
  const problems = [];
  page.on("console", (message) => {
    if (["error", "warn"].includes(message.type())) problems.push(message.text());
  });
  page.on("pageerror", (error) => problems.push(String(error)));
  await page.goto(made("one.html", sets("turnstile")));
  assert.deepEqual(await page.evaluate(tried), WELL);
  assert.deepEqual(problems, []);
});

/** What is there in words and pictures, for whoever sees no set. */
async function standing(page) {
  const box = await page.locator("backcut-set > svg").first().boundingBox();
  assert.ok(box && box.height > 300, "the poster");
  assert.equal(await page.getByRole("heading", { name: "Turnstile", level: 1 }).isVisible(), true);
  const { beats } = JSON.parse(readFileSync(sets("turnstile"), "utf8"));
  for (const { title, say } of beats) {
    assert.equal(await page.getByText(title, { exact: true }).first().isVisible(), true, title);
    assert.equal(await page.locator(".words").getByText(say).isVisible(), true, say);
  }
}

test("without script it shows poster, title and beats in words", async (t) => {
  const { page, problems } = await open(t, made("one.html", sets("turnstile")), {
    javaScriptEnabled: false,
  });
  await standing(page);
  assert.deepEqual(problems, []);
});

test("without wasm it shows them too, and says that nothing moves", async (t) => {
  const { page } = await open(t, made("one.html", sets("turnstile")), {}, () => {
    globalThis.WebAssembly.compile = () => Promise.reject(new Error("forbidden"));
  });
  await page.getByRole("alert").waitFor();
  await standing(page);
});

test("the set file that it hands out is the one it was made of", async (t) => {
  const { page } = await open(t, made("one.html", sets("turnstile")));
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("link", { name: "The set file" }).click(),
  ]);
  assert.equal(download.suggestedFilename(), "turnstile.json");
  assert.deepEqual(readFileSync(await download.path()), readFileSync(sets("turnstile")));
});

const THREE = ["turnstile", "lighthouse", "fogbank"].map(sets);

for (const script of [true, false]) {
  const how = script ? "with" : "without";
  test(`of several, one is chosen from a list, ${how} script`, async (t) => {
    const { page } = await open(t, made("three.html", ...THREE, "--title", "Lantern Week"), {
      javaScriptEnabled: script,
    });
    const seen = async () => {
      const shown = await page.locator("section > h2").all();
      const names = [];
      for (const name of shown) if (await name.isVisible()) names.push(await name.textContent());
      return names;
    };
    assert.equal(await page.title(), "Lantern Week");
    assert.deepEqual(await seen(), ["Turnstile"]);
    await page.getByRole("link", { name: "Fogbank" }).click();
    assert.deepEqual(await seen(), ["Fogbank"]);
    await page.emulateMedia({ media: "print" });
    assert.deepEqual(await seen(), ["Turnstile", "Lighthouse", "Fogbank"]);
  });
}

test("the chosen one plays, and the one before stands", async (t) => {
  const { page, problems } = await open(t, made("three.html", ...THREE));
  await page.evaluate(() => document.querySelector("backcut-set").ready);
  await page.getByRole("button", { name: "Play" }).click();
  await page.getByRole("link", { name: "Lighthouse" }).click();
  await page.locator("#lighthouse").getByRole("button", { name: "Play" }).click();
  await page.waitForFunction(
    () => document.querySelector("#lighthouse backcut-set").currentTime > 0.2,
  );
  const before = () => page.evaluate(() => document.querySelector("backcut-set").currentTime);
  const stood = await before();
  await page.waitForFunction(
    () => document.querySelector("#lighthouse backcut-set").currentTime > 0.5,
  );
  assert.equal(await before(), stood);
  assert.deepEqual(problems, []);
});

test("on paper each beat of each set is drawn", async (t) => {
  const { page } = await open(t, made("three.html", ...THREE));
  await page.evaluate(() =>
    Promise.all([...document.querySelectorAll("backcut-set")].map((set) => set.ready)),
  );
  await page.waitForFunction(() =>
    [...document.querySelectorAll("backcut-set")].every((set) =>
      set.shadowRoot.querySelector(".sheet"),
    ),
  );
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  const drawn = await page.evaluate(() =>
    [...document.querySelectorAll("backcut-set")].map(
      (set) => set.shadowRoot.querySelectorAll(".sheet canvas").length,
    ),
  );
  // Each beat, the strip and the key.
  const beats = THREE.map((file) => JSON.parse(readFileSync(file, "utf8")).beats.length);
  assert.deepEqual(
    drawn,
    beats.map((n) => n + 2),
  );
});

for (const width of [390, 820]) {
  test(`the court takes the poster's place, nothing moves by more than a pixel, ${width} wide`, async (t) => {
    const address = made("one.html", sets("turnstile"));
    const viewport = { width, height: 1400 };
    const { page } = await open(t, address, { viewport }, () => {
      const { compile } = WebAssembly;
      const free = new Promise((resolve) => (globalThis.release = resolve));
      WebAssembly.compile = (bytes) => free.then(() => compile(bytes));
    });
    await page.locator("backcut-set > svg").waitFor();
    const boxes = async (picture) => {
      const all = {};
      const places = { picture, beat: ".beat", strip: ".strip", controls: ".row.first" };
      for (const [name, place] of Object.entries(places)) {
        all[name] = await page.locator(place).first().boundingBox();
      }
      return all;
    };
    const before = await boxes("backcut-set > svg");
    assert.equal(await page.locator("backcut-set > .words").isVisible(), false);
    await page.evaluate(() => {
      globalThis.release();
      return document.querySelector("backcut-set").ready;
    });
    const now = await boxes(".court");
    for (const [name, { x, y, width: wide, height }] of Object.entries(before)) {
      const is = now[name];
      for (const [a, b] of [
        [x, is.x],
        [y, is.y],
        [wide, is.width],
        [height, is.height],
      ]) {
        assert.ok(Math.abs(a - b) <= 1, `${name}: ${JSON.stringify([before[name], is])}`);
      }
    }
  });
}
