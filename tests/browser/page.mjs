// Opens pages with sets on them in Chromium.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { after, before } from "node:test";
import { chromium } from "playwright-core";
import { browser as installed } from "../../.ci/setup.mjs";
import { serve } from "./server.mjs";

/** A set that lasts some seconds and has several beats. */
export const SET = {
  backcut: 1,
  title: "Harbour",
  court: "fiba",
  level: "adult",
  players: {
    1: { at: "top", ball: true },
    2: { at: "left wing" },
    3: { at: "right wing" },
    4: { at: "left elbow" },
    5: { at: "right block" },
  },
  beats: [
    { title: "Enter", actions: [{ who: 1, do: "pass", to: 2 }] },
    {
      title: "Cut",
      actions: [
        { who: 1, do: "cut", to: "right corner" },
        { who: 3, do: "cut", to: "top" },
      ],
    },
    { title: "Swing", actions: [{ who: 2, do: "pass", to: 3 }] },
  ],
};

/** The same with the author's own words for every beat: nothing is left to the full module. */
export const TOLD = {
  ...SET,
  beats: SET.beats.map((beat) => ({ ...beat, say: `${beat.title}, and hold.` })),
};

/** The same with two places that do not exist. */
export const WRONG = JSON.stringify(SET, null, 2)
  .replace('"left elbow"', '"left elbwo"')
  .replace('"right block"', '"right blokc"');

/** Where a browser is; the tests leave none out. @param {"Chromium" | "Firefox"} name */
export function executable(name) {
  const path = installed(name);
  if (!path) throw new Error(`${name} is missing: run \`npm run setup\`.`);
  return path;
}

/** A browser and a server, for one test file. */
export async function start() {
  const server = await serve({
    "/set.json": { type: "application/json", body: JSON.stringify(SET) },
    "/told.json": { type: "application/json", body: JSON.stringify(TOLD) },
    "/wrong.json": { type: "application/json", body: WRONG },
  });
  const browser = await chromium.launch({
    executablePath: executable("Chromium"),
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-background-networking",
      "--disable-component-update",
    ],
  });
  return {
    server,
    browser,
    async stop() {
      await browser.close();
      server.close();
    },
    open: (options) => open(browser, server, options),
  };
}

/** A browser for all tests of a file, and how each opens pages that close with it. */
export function inBrowser() {
  let browser;
  before(async () => {
    browser = await start();
  });
  after(() => browser.stop());
  return {
    get server() {
      return browser.server;
    },
    async open(t, options) {
      const opened = await browser.open(options);
      t.after(() => opened.page.close());
      return opened;
    },
  };
}

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What an audit of accessibility finds in the sets of a page; empty is good. */
export async function audit(page) {
  if (!(await page.evaluate(() => "axe" in globalThis))) await page.evaluate(AXE);
  const { violations } = await page.evaluate(() =>
    globalThis.axe.run("backcut-set", {
      resultTypes: ["violations"],
      // It is left out otherwise.
      rules: { "target-size": { enabled: true } },
    }),
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.html).join(" ")}`);
}

let pages = 0;

/**
 * A page with `body` in it. `problems` collects what the page complains of; a test that expects
 * none checks that.
 */
async function open(
  browser,
  server,
  { body = TAG, head = "", wait = true, policy, ...context } = {},
) {
  const path = `/page-${(pages += 1)}.html`;
  server.answers[path] = {
    type: "text/html; charset=utf-8",
    policy,
    body: `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>A page</title>
      <meta name="viewport" content="width=device-width"><link rel="icon" href="/icon">
      ${head}<script type="module" src="/wasm/pkg/backcut.js"></script></head>
      <body><main><h1>A page</h1>${body}</main></body></html>`,
  };
  server.answers["/icon"] = { type: "image/png" };
  const page = await browser.newPage({ viewport: { width: 820, height: 1000 }, ...context });
  page.setDefaultTimeout(15_000);
  const problems = [];
  page.on("console", (message) => {
    // Reading pixels back is what these tests do, not what the element does.
    if (message.text().includes("getImageData")) return;
    if (["error", "warning"].includes(message.type())) problems.push(message.text());
  });
  page.on("pageerror", (error) => problems.push(String(error)));
  await page.addInitScript(() => {
    addEventListener("securitypolicyviolation", (e) =>
      console.error(`violates ${e.violatedDirective}`),
    );
    globalThis.frames_requested = 0;
    const request = globalThis.requestAnimationFrame;
    globalThis.requestAnimationFrame = (callback) => {
      globalThis.frames_requested += 1;
      return request(callback);
    };
  });
  await page.goto(server.origin + path);
  if (wait)
    await page.evaluate(() =>
      Promise.all([...document.querySelectorAll("backcut-set")].map((e) => e.ready)),
    );
  if (wait) await near(page);
  return { page, problems };
}

/** One set. */
export const TAG = '<backcut-set src="/set.json"></backcut-set>';

/** Resolves once what comes after the first picture is there, for every set. */
export function refined(page) {
  return page.waitForFunction(
    () =>
      [...document.querySelectorAll("backcut-set")].every((set) =>
        set.shadowRoot.querySelector(".sheet"),
      ),
    undefined,
    // Not by frames, which a test may count, or hold.
    { polling: 20 },
  );
}

/** Resolves once a frame that began after this is over: all is laid out and drawn as it stands. */
export function drawn(page) {
  return page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
  );
}

/**
 * Resolves once the page's observers have told where things are: a set may be open before that, but
 * is laid out and painted only then. Of a page's observers the last made is told last.
 */
export function near(page) {
  return page.evaluate(
    () => new Promise((told) => new IntersectionObserver(told).observe(document.body)),
  );
}

/** Has the server keep back what a page asks for of `files`; the promised function lets it come. */
export async function held(page, files) {
  let come = () => {};
  const coming = new Promise((resolve) => (come = resolve));
  await page.route(files, (route) => coming.then(() => route.continue()));
  return come;
}

/** Has the first set play so many times as fast: slowly, where a busy machine may come too late. */
export function pace(page, rate) {
  return page.evaluate((to) => {
    document.querySelector("backcut-set").playbackRate = to;
  }, rate);
}

/** A property of the first set on the page. */
export function property(page, name) {
  return page.evaluate((key) => document.querySelector("backcut-set")[key], name);
}

/** Resolves with the first event of that name on the first set; ask before doing what causes it. */
export function event(page, name) {
  return page.evaluate(
    (type) =>
      new Promise((resolve, reject) => {
        const set = document.querySelector("backcut-set");
        set.addEventListener(type, () => resolve(true), { once: true });
        setTimeout(() => reject(new Error(`no ${type} came`)), 15_000);
      }),
    name,
  );
}

/** A number over a canvas's pixels; 0 is the court, 1 the movers, 2 and 3 the strip. */
export function pixels(page, canvas) {
  return page.evaluate((index) => {
    const found = document.querySelector("backcut-set").shadowRoot.querySelectorAll("canvas")[
      index
    ];
    const { data } = found.getContext("2d").getImageData(0, 0, found.width, found.height);
    let hash = 0;
    for (const byte of data) hash = (Math.imul(hash, 31) + byte) | 0;
    return {
      hash,
      painted: data.some((byte) => byte !== 0),
      width: found.width,
      height: found.height,
    };
  }, canvas);
}
