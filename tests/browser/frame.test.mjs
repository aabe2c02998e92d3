// The frame page inside a page of another origin, with the script that the README gives.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { SET, start } from "./page.mjs";
import { serve } from "./server.mjs";

const README = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
const SNIPPET = [...README.matchAll(/```html\n(.*?)```/gs)]
  .map(([, html]) => html)
  .find((html) => html.includes("<iframe"));
const FRAME = "https://club.example/backcut/frame.html#src=../sets/turnstile.json";
/** A page that takes frames and scripts of its own; all else it forbids. */
const POLICY = "default-src 'none'; script-src 'unsafe-inline'; frame-src http:; img-src data:";

let club;
let blog;
before(async () => {
  club = await start();
  blog = await serve();
});
after(async () => {
  blog?.close();
  await club?.stop();
});

const address = (words) => `${club.server.origin}/wasm/pkg/frame.html#${words}`;

/** A page of the blog with the README's frame, more or less. */
async function open(t, { words = "src=/set.json", html = SNIPPET, more = "", ...context } = {}) {
  assert.ok(html.includes(FRAME), "the README's address");
  blog.answers["/post.html"] = {
    type: "text/html; charset=utf-8",
    policy: POLICY,
    body: `<!doctype html><html lang="en"><title>A post</title><link rel="icon" href="data:,">
      ${html.replace(FRAME, address(words))}${more}</html>`,
  };
  const page = await club.browser.newPage({ viewport: { width: 900, height: 1100 }, ...context });
  t.after(() => page.close());
  page.setDefaultTimeout(15_000);
  const problems = [];
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) problems.push(message.text());
  });
  page.on("request", (request) => requests.push(request.url()));
  const requests = [];
  await page.goto(`${blog.origin}/post.html`);
  // It is lazy: the page does not wait for it.
  const frame = await (await page.locator("iframe").first().elementHandle()).contentFrame();
  await frame.waitForURL(/frame\.html/);
  await frame.waitForFunction(() => {
    const set = document.querySelector("backcut-set");
    return set?.readyState === 4 || set?.error;
  });
  return { page, frame, problems, requests };
}

const outside = (page) => page.evaluate(() => Number(document.querySelector("iframe").height));
const inside = (frame) =>
  frame.evaluate(() => document.querySelector("backcut-set").getBoundingClientRect().height);

/** Resolves once the frame is as high as what is in it. */
async function fits(page, frame) {
  let height = NaN;
  // Both are measured until they agree: a set may be on its way to the height that it will have.
  while (!(Math.abs((await outside(page)) - height) <= 1)) height = await inside(frame);
  return height;
}

test("the frame is as high as the set, and follows it", async (t) => {
  const { page, frame, problems } = await open(t);
  await frame.waitForFunction(() =>
    document.querySelector("backcut-set").shadowRoot.querySelector(".sheet"),
  );
  const whole = await fits(page, frame);
  const scrolls = () =>
    frame.evaluate(() => document.scrollingElement.scrollHeight > Math.ceil(innerHeight));
  assert.equal(await scrolls(), false);
  await frame.getByRole("button", { name: "Captions" }).click();
  await page.waitForFunction((h) => document.querySelector("iframe").height < h, whole - 10);
  await fits(page, frame);
  assert.equal(await scrolls(), false);
  assert.deepEqual(problems, []);
});

test("what folds goes by the window around the frame, not by the frame", async (t) => {
  const low = SNIPPET.replace('height="920"', 'height="150"');
  const { page, frame } = await open(t, { html: low });
  const strip = () => frame.getByRole("slider").evaluate((node) => node.clientHeight);
  await page.waitForFunction(() => document.querySelector("iframe").height > 800);
  await fits(page, frame);
  const whole = await strip();
  await page.setViewportSize({ width: 900, height: 700 });
  await page.waitForFunction(() => document.querySelector("iframe").height <= 700);
  await fits(page, frame);
  assert.ok((await strip()) < whole);
});

test("it plays inside, on a page that may run nothing of ours", async (t) => {
  const html = SNIPPET.replace(/<script>.*<\/script>/s, "");
  const { page, frame } = await open(t, { html });
  const height = await outside(page);
  await frame.getByRole("button", { name: "Play" }).click();
  await frame.waitForFunction(() => document.querySelector("backcut-set").currentTime > 0.2);
  assert.equal(await outside(page), height, "nobody asked");
});

test("attributes come from the address", async (t) => {
  const { frame } = await open(t, { words: "src=/set.json&follow=2&coverage=switch&theme=dark" });
  await frame.waitForFunction(() => document.querySelector("backcut-set").looks?.length > 0);
  const set = frame.locator("backcut-set");
  assert.equal(await set.getAttribute("follow"), "2");
  assert.equal(await set.getAttribute("theme"), "dark");
  await frame.evaluate(() => {
    location.hash = "src=/told.json";
  });
  await frame.getByText("Enter, and hold.").first().waitFor();
  assert.equal(await set.getAttribute("coverage"), null);
});

test("the page hears the frame alone", async (t) => {
  const stranger = `<iframe class="stranger" src="${address("src=/set.json")}"></iframe>`;
  const { page, frame } = await open(t, { more: stranger });
  const height = await fits(page, frame);
  // The very message, from the page itself, and from a window of the right origin that is not the frame.
  await page.evaluate(() => window.postMessage({ backcut: "size", height: 77 }, "*"));
  const other = page.frames().find((found) => found !== frame && found !== page.mainFrame());
  await other.evaluate(() => parent.postMessage({ backcut: "size", height: 78 }, "*"));
  // And from the frame itself, but no height.
  for (const wrong of [-5, 1e9, "tall", null]) {
    await frame.evaluate((h) => parent.postMessage({ backcut: "size", height: h }, "*"), wrong);
  }
  // Whatever was to be heard has been heard once the page asked and got an answer.
  await answered(page);
  assert.ok(Math.abs((await outside(page)) - height) <= 1, `${await outside(page)}`);
});

/** Asks as the script does and waits for the answer. */
function answered(page) {
  return page.evaluate(
    () =>
      new Promise((resolve) => {
        const frame = document.querySelector("iframe");
        addEventListener("message", ({ source }) => source === frame.contentWindow && resolve());
        const { origin } = new URL(frame.src);
        frame.contentWindow.postMessage({ backcut: "size", room: innerHeight }, origin);
      }),
  );
}

test("the frame hears the page around it alone, and answers no one else", async (t) => {
  const stranger = `<iframe class="stranger" src="${address("src=/set.json")}"></iframe>`;
  const { page, frame } = await open(t, { more: stranger });
  await fits(page, frame);
  const room = () =>
    frame.evaluate(() =>
      document.querySelector("backcut-set").style.getPropertyValue("--backcut-room"),
    );
  assert.equal(await room(), "1100px");
  const other = page.frames().find((found) => found !== frame && found !== page.mainFrame());
  await other.waitForLoadState();
  await other.evaluate(() => {
    globalThis.told = [];
    addEventListener("message", ({ source }) => source !== parent && globalThis.told.push(1));
    parent.frames[0].postMessage({ backcut: "size", room: 300 }, "*");
  });
  await frame.evaluate(() => window.postMessage({ backcut: "size", room: 301 }, "*"));
  // A room that no window has is not taken either.
  await page.evaluate(() => {
    for (const wrong of [0, 1e9, "red", {}]) {
      frames[0].postMessage({ backcut: "size", room: wrong }, "*");
    }
  });
  await answered(page);
  assert.equal(await room(), "1100px");
  assert.deepEqual(await other.evaluate(() => globalThis.told), []);
});

test("a set of another site is neither asked for nor shown", async (t) => {
  blog.answers["/set.json"] = { type: "application/json", body: JSON.stringify(SET) };
  const theirs = `${blog.origin}/set.json`;
  const { frame, requests } = await open(t, { words: `src=${theirs}` });
  assert.equal(await frame.getByRole("alert").isVisible(), true);
  assert.ok(!requests.includes(theirs));
});

test("a frame speaks the language that its address asks for", async (t) => {
  const { frame } = await open(t, { words: "src=/set.json&lang=es" });
  await frame.getByRole("button", { name: "Ver", exact: true }).waitFor();
  await frame.evaluate(() => (location.hash = "#src=/told.json"));
  await frame.getByRole("button", { name: "Play", exact: true }).waitFor();
});
