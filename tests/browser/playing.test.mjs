import assert from "node:assert/strict";
import { test } from "node:test";
import { TAG, event, inBrowser, pace, pixels, property } from "./page.mjs";

const browser = inBrowser();
const { open } = browser;

const button = (page, name) => page.getByRole("button", { name, exact: true });

test("the first picture is there without a click", async (t) => {
  const { page, problems } = await open(t);
  assert.equal(await property(page, "paused"), true);
  assert.equal(await property(page, "currentTime"), 0);
  // The strip follows in the next frame: words on a canvas have the page laid out first.
  await page.waitForFunction(() =>
    [...document.querySelector("backcut-set").shadowRoot.querySelectorAll("canvas")].every(
      (canvas) =>
        canvas.width > 0 &&
        canvas
          .getContext("2d")
          .getImageData(0, 0, canvas.width, canvas.height)
          .data.some((byte) => byte !== 0),
    ),
  );
  assert.deepEqual(problems, []);
});

test("play moves the players, pause stops them where they are", async (t) => {
  const { page } = await open(t);
  const before = await pixels(page, 1);
  await pace(page, 0.2);
  await button(page, "Play").click();
  await page.waitForFunction(() => document.querySelector("backcut-set").currentTime > 0.2);
  await button(page, "Pause").click();
  const time = await property(page, "currentTime");
  assert.ok(time > 0);
  assert.notEqual((await pixels(page, 1)).hash, before.hash);
  assert.equal(await property(page, "paused"), true);
});

test("a paused set asks for no animation frame", async (t) => {
  const { page } = await open(t);
  const asked = () => page.evaluate(() => globalThis.frames_requested);
  const before = await asked();
  await page.evaluate(() => {
    for (let t = 0; t < 1; t += 0.1) document.querySelector("backcut-set").currentTime = t;
  });
  // One, for the words beside the picture.
  assert.ok((await asked()) <= before + 1);
  const paused = event(page, "pause");
  await page.evaluate(async () => {
    await document.querySelector("backcut-set").play();
    document.querySelector("backcut-set").pause();
  });
  await paused;
  const then = await asked();
  // Two frames of the page's own: whoever still runs would have asked by then.
  await page.evaluate(
    () =>
      new Promise((resolve) => {
        const channel = new MessageChannel();
        let turns = 0;
        channel.port1.onmessage = () => (++turns < 200 ? channel.port2.postMessage(0) : resolve());
        channel.port2.postMessage(0);
      }),
  );
  assert.equal(await asked(), then);
});

test("at the end it says so, and offers to play again", async (t) => {
  const { page } = await open(t);
  const ended = event(page, "ended");
  await page.evaluate(() => {
    const set = document.querySelector("backcut-set");
    set.currentTime = set.duration - 0.05;
    set.play();
  });
  await ended;
  assert.equal(await property(page, "currentTime"), await property(page, "duration"));
  assert.equal(await property(page, "ended"), true);
  await button(page, "Again").click();
  assert.equal(await property(page, "ended"), false);
  assert.equal(await property(page, "paused"), false);
});

test("a set that loops starts again and does not end", async (t) => {
  const { page } = await open(t, { body: '<backcut-set src="/set.json" loop></backcut-set>' });
  const wrapped = event(page, "seeked");
  await page.evaluate(() => {
    const set = document.querySelector("backcut-set");
    set.currentTime = set.duration - 0.02;
    return new Promise((resolve) => queueMicrotask(resolve)).then(() => set.play());
  });
  await wrapped;
  assert.equal(await property(page, "ended"), false);
});

test("each speed is pressed alone and sets the rate", async (t) => {
  const { page } = await open(t);
  for (const [word, rate] of [
    ["Slow", 0.25],
    ["Half", 0.5],
    ["Game speed", 1],
  ]) {
    await button(page, word).click();
    assert.equal(await property(page, "playbackRate"), rate);
    const pressed = page.locator(".row.first [aria-pressed=true]");
    assert.deepEqual(await pressed.allTextContents(), [word]);
  }
});

test("a frame is a thirtieth of a second, forth and back", async (t) => {
  const { page } = await open(t);
  await button(page, "Next frame").click();
  assert.ok(Math.abs((await property(page, "currentTime")) - 1 / 30) < 1e-9);
  await button(page, "Previous frame").click();
  assert.ok(Math.abs(await property(page, "currentTime")) < 1e-9);
});

test("beats are stepped through, and named", async (t) => {
  const { page } = await open(t);
  const title = page.locator(".beat h3");
  const first = await title.textContent();
  await button(page, "Next beat").click();
  const start = await property(page, "currentTime");
  assert.ok(start > 0);
  assert.notEqual(await title.textContent(), first);
  assert.match(await page.locator(".count").textContent(), /^beat 2 of \d$/);
  await button(page, "Previous beat").click();
  assert.equal(await property(page, "currentTime"), 0);
});

test("the caption box keeps its height from beat to beat", async (t) => {
  const { page } = await open(t, { body: TAG.replace("set.json", "told.json") });
  const top = async () => (await page.locator(".strip").boundingBox()).y;
  const before = await top();
  await button(page, "Next beat").click();
  assert.equal(await top(), before);
});

test("following a player paints them apart; the same again follows all", async (t) => {
  const { page } = await open(t);
  const before = await pixels(page, 1);
  await button(page, "Follow 3").click();
  assert.notEqual((await pixels(page, 1)).hash, before.hash);
  assert.equal(await button(page, "Follow 3").getAttribute("aria-pressed"), "true");
  await button(page, "Follow 3").click();
  assert.equal((await pixels(page, 1)).hash, before.hash);
  assert.equal(await button(page, "all").getAttribute("aria-pressed"), "true");
});

test("a time gives the same picture however it is reached", async (t) => {
  const { page } = await open(t);
  const at = async (time) => {
    await page.evaluate((value) => {
      document.querySelector("backcut-set").currentTime = value;
    }, time);
    return (await pixels(page, 1)).hash;
  };
  const once = await at(2);
  assert.notEqual(await at(0.5), once);
  assert.equal(await at(2), once);
});

test("events come in the media element's order", async (t) => {
  const { page } = await open(t);
  const names = await page.evaluate(async () => {
    const set = document.querySelector("backcut-set");
    const seen = [];
    for (const name of ["play", "pause", "seeking", "seeked", "ratechange"]) {
      set.addEventListener(name, () => seen.push(name));
    }
    set.currentTime = 1;
    set.playbackRate = 0.5;
    await set.play();
    set.pause();
    await Promise.resolve();
    return seen;
  });
  assert.deepEqual(names, ["seeking", "seeked", "ratechange", "play", "pause"]);
});

test("whoever asks for less motion gets pictures, beat by beat", async (t) => {
  const { page } = await open(t, {
    reducedMotion: "reduce",
    body: '<backcut-set src="/set.json" autoplay></backcut-set>',
  });
  const opened = await property(page, "currentTime");
  assert.ok(opened > 0, "opens on the last picture of the first beat");
  await button(page, "Next beat").first().click();
  assert.ok((await property(page, "currentTime")) > opened);
  assert.equal(await property(page, "paused"), true);
});

test("it starts by itself only once half of it is seen", async (t) => {
  const body = '<div class="far"></div><backcut-set src="/set.json" autoplay></backcut-set>';
  const head = '<link rel="stylesheet" href="/far.css">';
  browser.server.answers["/far.css"] = { type: "text/css", body: ".far { height: 3000px }" };
  const { page } = await open(t, { body, head });
  assert.equal(await property(page, "paused"), true);
  const playing = event(page, "play");
  await page.locator("backcut-set").scrollIntoViewIfNeeded();
  await playing;
  assert.equal(await property(page, "paused"), false);
});
