// The element in Firefox: what an engine of another origin might do otherwise. All else is tested in
// Chromium alone.

import assert from "node:assert/strict";
import { readdirSync } from "node:fs";
import { after, before, test } from "node:test";
import { launch } from "puppeteer-core";
import { clip } from "./clip.mjs";
import { SET, executable, refined, start } from "./page.mjs";

const SETS = readdirSync(new URL("../../web-demo/sets/", import.meta.url)).filter((name) =>
  name.endsWith(".json"),
);
const DEMO = "/web-demo/sets/turnstile.json";

let chromium;
let firefox;
before(async () => {
  chromium = await start();
  firefox = await launch({
    browser: "firefox",
    executablePath: executable("Firefox"),
    headless: true,
  });
});
after(async () => {
  await firefox?.close();
  await chromium?.stop();
});

/** A page in Firefox with one set on it; resolves once the set is there, or cannot be. */
async function open(t, src = DEMO) {
  const { server } = chromium;
  server.answers["/firefox.html"] = {
    type: "text/html; charset=utf-8",
    body: `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>A page</title>
      <link rel="icon" href="/icon"><script type="module" src="/wasm/pkg/backcut.js"></script></head>
      <body><main><h1>A page</h1><backcut-set src="${src}"></backcut-set></main></body></html>`,
  };
  server.answers["/icon"] = { type: "image/png" };
  const page = await firefox.newPage();
  t.after(() => page.close());
  const problems = [];
  page.on("console", (message) => {
    if (["error", "warn"].includes(message.type())) problems.push(message.text());
  });
  page.on("pageerror", (error) => problems.push(String(error)));
  await page.setViewport({ width: 820, height: 1000 });
  await page.goto(`${server.origin}/firefox.html`);
  await page.evaluate(() => document.querySelector("backcut-set").ready.catch(() => {}));
  return { page, problems };
}

const property = (page, name) =>
  page.evaluate((key) => document.querySelector("backcut-set")[key], name);

const press = async (page, name) => {
  const button = await page.waitForSelector(`>>> ::-p-aria([name="${name}"][role="button"])`);
  await button.click();
};

/** Resolves once each of so many canvases has something on it: the set is there before it is drawn. */
const painted = (page, canvases) =>
  page.waitForFunction(
    (count) => {
      const root = document.querySelector("backcut-set").shadowRoot;
      const all = [...root.querySelectorAll(".reader canvas")].map((canvas) => {
        const { data } = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height);
        return data.some((byte) => byte !== 0);
      });
      return all.length === count && all.every(Boolean);
    },
    {},
    canvases,
  );

test("the first picture of a demo set is there, without one complaint", async (t) => {
  const { page, problems } = await open(t);
  assert.equal(await property(page, "paused"), true);
  await painted(page, 5);
  assert.deepEqual(problems, []);
});

test("it plays, and stops where it is paused", async (t) => {
  const { page } = await open(t);
  // Slowly: a busy machine may need seconds to find the button, and the set is not to end.
  await page.evaluate(() => (document.querySelector("backcut-set").playbackRate = 0.1));
  await press(page, "Play");
  await page.waitForFunction(() => document.querySelector("backcut-set").currentTime > 0.2);
  await press(page, "Pause");
  const time = await property(page, "currentTime");
  assert.equal(await property(page, "paused"), true);
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(done)));
  assert.equal(await property(page, "currentTime"), time);
});

test("it seeks to the very instant, and tells so in order", async (t) => {
  const { page } = await open(t);
  const told = await page.evaluate(async () => {
    const set = document.querySelector("backcut-set");
    const seen = [];
    for (const name of ["seeking", "timeupdate", "seeked"]) {
      set.addEventListener(name, () => seen.push(name));
    }
    set.currentTime = 2.5;
    await Promise.resolve();
    return { seen, time: set.currentTime, frame: set.frame[0] };
  });
  assert.deepEqual(told, { seen: ["seeking", "timeupdate", "seeked"], time: 2.5, frame: 2.5 });
});

test("keys act with the focus inside", async (t) => {
  const { page } = await open(t);
  await page.waitForFunction(() =>
    document.querySelector("backcut-set").shadowRoot.querySelector(".sheet"),
  );
  await page.keyboard.press("End");
  assert.equal(await property(page, "currentTime"), 0);
  await page.evaluate(() =>
    document.querySelector("backcut-set").shadowRoot.querySelector('[role="slider"]').focus(),
  );
  await page.keyboard.press("ArrowRight");
  assert.equal(await property(page, "currentTime"), 1);
  await page.keyboard.press("End");
  assert.equal(await property(page, "currentTime"), await property(page, "duration"));
  await page.keyboard.press("Home");
  await page.keyboard.press(" ");
  assert.equal(await property(page, "paused"), false);
});

test("a file with faults shows the first with its line", async (t) => {
  const { page } = await open(t, "/wrong.json");
  const told = await page.evaluate(() => {
    const set = document.querySelector("backcut-set");
    const note = set.shadowRoot.querySelector('[role="alert"]');
    return {
      text: note.textContent,
      seen: note.checkVisibility(),
      faults: set.error.faults.length,
    };
  });
  assert.match(told.text, /This set cannot be shown.*Line \d+/);
  assert.equal(told.seen, true);
  assert.ok(told.faults >= 1);
});

test("on paper each beat is drawn", async (t) => {
  const { page } = await open(t, "/set.json");
  await refined(page);
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  // Court, movers, strip twice, key; then each beat, the strip and the key again.
  await painted(page, 5 + SET.beats.length + 2);
});

/** Runs in a page: a number over the bits of 30 frames a second, by set. */
async function bits(names) {
  const set = document.querySelector("backcut-set");
  // Only the numbers are asked for: what is hidden is not painted.
  set.hidden = true;
  const out = {};
  for (const name of names) {
    set.src = `/web-demo/sets/${name}`;
    await new Promise((resolve) => set.addEventListener("loadedmetadata", resolve, { once: true }));
    let hash = 0;
    for (let i = 0; i <= set.duration * 30; i += 1) {
      set.currentTime = i / 30;
      const { buffer, byteOffset, length } = set.frame;
      for (const word of new Uint32Array(buffer, byteOffset, length)) {
        hash = (Math.imul(hash, 31) + word) | 0;
      }
    }
    out[name] = [set.duration, hash];
  }
  return out;
}

test("every demo set moves as in Chromium, to the last bit", async (t) => {
  const { page } = await open(t, "/set.json");
  const opened = await chromium.open();
  t.after(() => opened.page.close());
  const [here, there] = [await page.evaluate(bits, SETS), await opened.page.evaluate(bits, SETS)];
  assert.ok(SETS.length >= 8);
  assert.deepEqual(here, there);
});

test("a film plays with its set, never a picture apart", async (t) => {
  const opened = await chromium.open();
  t.after(() => opened.page.close());
  chromium.server.answers["/film.webm"] = {
    type: "video/webm",
    body: await clip(opened.page, 8),
  };
  const { page, problems } = await open(t, "/set.json");
  await refined(page);
  await page.evaluate(() => (document.querySelector("backcut-set").film = "/film.webm"));
  await press(page, "Film");
  await page.waitForFunction(() => {
    const video = document.querySelector("backcut-set").shadowRoot.querySelector("video");
    return video?.readyState >= 2 && !video.seeking;
  });
  const { apart, notDue } = await page.evaluate(async () => {
    const set = document.querySelector("backcut-set");
    const video = set.shadowRoot.querySelector("video");
    const apart = [];
    let notDue = 0;
    const next = (_, { mediaTime }) => {
      // Where processors are busy Firefox tells of pictures that its film is tenths of a second from.
      const due = mediaTime - video.currentTime < 0.1;
      if (!due) notDue += 1;
      requestAnimationFrame(() => {
        if (!set.paused && due) apart.push(Math.abs(set.currentTime - mediaTime));
      });
      video.requestVideoFrameCallback(next);
    };
    video.requestVideoFrameCallback(next);
    const ended = new Promise((done) => set.addEventListener("ended", done, { once: true }));
    await set.play();
    await ended;
    return { apart, notDue };
  });
  assert.ok(apart.length >= 20, `${apart.length} pictures`);
  assert.ok(notDue <= apart.length / 10, `${notDue} pictures that were not due`);
  assert.ok(Math.max(...apart) < 1 / 30, `${Math.max(...apart)} s apart`);
  assert.deepEqual(problems, []);
});
