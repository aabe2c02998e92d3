// What must not grow, drift or go on unseen: long loops, many mounts, many sets, hidden tabs.

import assert from "node:assert/strict";
import { test } from "node:test";
import { TAG, event, inBrowser, near, pace, pixels, property, refined } from "./page.mjs";

const { open } = inBrowser();

const TOLD = TAG.replace("set.json", "told.json");
const MEGABYTE = 1_000_000;

/** Bytes of the page's heap that are in use once all that can go is gone. */
async function heap(client) {
  await client.send("HeapProfiler.collectGarbage");
  await client.send("HeapProfiler.collectGarbage");
  return (await client.send("Runtime.getHeapUsage")).usedSize;
}

/** Takes the page's frames in hand: `frames(n, seconds)` has n of them come, so far apart. */
function byHand(page) {
  return page.addInitScript(() => {
    let waiting = [];
    let now = 1000;
    globalThis.requestAnimationFrame = (callback) => waiting.push(callback);
    globalThis.cancelAnimationFrame = (id) => waiting.splice(id - 1, 1);
    globalThis.frames = (count, seconds) => {
      for (let i = 0; i < count; i += 1) {
        now += seconds * 1000;
        for (const callback of waiting.splice(0)) callback(now);
      }
    };
  });
}

test("ten minutes of looping leave nothing behind, and it is where the clock says", async (t) => {
  const { page } = await open(t, { body: "", wait: false });
  await byHand(page);
  await page.reload();
  await page.evaluate((html) => {
    document.querySelector("main").innerHTML = html.replace(" src", " loop src");
    return document.querySelector("backcut-set").ready;
  }, TOLD);
  await refined(page);
  await near(page);
  await page.evaluate(() => document.querySelector("backcut-set").play());
  const client = await page.context().newCDPSession(page);
  const memory = () =>
    page.evaluate(() => document.querySelector("backcut-set").frame.buffer.byteLength);
  /** A minute, in steps as long as they may be; the page draws in between. */
  const minute = async () => {
    for (let i = 0; i < 10; i += 1) await page.evaluate(() => globalThis.frames(60, 0.1));
  };
  await page.evaluate(() => globalThis.frames(1, 0));
  await minute();
  const [before, wasm] = [await heap(client), await memory()];
  for (let i = 1; i < 10; i += 1) await minute();
  const grown = (await heap(client)) - before;
  console.log(`${grown} bytes of heap`);
  assert.ok(grown < 0.1 * MEGABYTE, `${grown} bytes`);
  assert.equal(await memory(), wasm);
  const { time, duration } = await page.evaluate(() => {
    const { currentTime, duration } = document.querySelector("backcut-set");
    return { time: currentTime, duration };
  });
  const apart = Math.abs(time - (600 % duration));
  assert.ok(Math.min(apart, duration - apart) < 1 / 60, `${time}, ${600 % duration}`);
});

test("mounted a hundred times it leaves nothing behind", async (t) => {
  const { page } = await open(t, { body: "", wait: false });
  const client = await page.context().newCDPSession(page);
  const mount = (times) =>
    page.evaluate(async (count) => {
      const main = document.querySelector("main");
      let size = 0;
      for (let i = 0; i < count; i += 5) {
        const sets = Array.from({ length: 5 }, () => document.createElement("backcut-set"));
        for (const set of sets) set.src = "/told.json";
        main.append(...sets);
        await Promise.all(sets.map((set) => set.ready));
        size = sets[0].frame.buffer.byteLength;
        main.replaceChildren();
        while (sets.some((set) => set.readyState !== 0)) {
          await new Promise((resolve) => setTimeout(resolve, 5));
        }
      }
      performance.clearResourceTimings();
      return size;
    }, times);
  // What comes once has come then.
  const memory = await mount(10);
  const before = await heap(client);
  assert.equal(await mount(100), memory, "of wasm");
  const grown = (await heap(client)) - before;
  console.log(`${grown} bytes of heap`);
  assert.ok(grown < 0.3 * MEGABYTE, `${grown} bytes`);
});

/** How far every set is, and how many frames were asked for until then. */
const standing = (page) =>
  page.evaluate(() => ({
    times: [...document.querySelectorAll("backcut-set")].map((set) => set.currentTime),
    frames: globalThis.frames_requested,
  }));

/** Counts, by the place of its set, on which sets something is drawn from now on. */
function countDrawing(page) {
  return page.evaluate(() => {
    const sets = [...document.querySelectorAll("backcut-set")];
    globalThis.drawn = sets.map(() => 0);
    const { fill } = CanvasRenderingContext2D.prototype;
    CanvasRenderingContext2D.prototype.fill = function (...how) {
      const { host } = this.canvas.getRootNode();
      globalThis.drawn[sets.indexOf(host)] += 1;
      return fill.apply(this, how);
    };
  });
}

test("of twenty that play only those in the window draw, in one loop", async (t) => {
  const { page } = await open(t, { body: TOLD.repeat(20), viewport: { width: 820, height: 1200 } });
  await refined(page);
  await page.evaluate(() => scrollTo(0, 3000));
  const seen = () =>
    page.evaluate(() =>
      [...document.querySelectorAll("backcut-set")].map((set) => {
        const { top, bottom } = set.getBoundingClientRect();
        return bottom > 0 && top < innerHeight;
      }),
    );
  await page.evaluate(() => {
    for (const set of document.querySelectorAll("backcut-set")) set.play();
  });
  const inWindow = await seen();
  assert.ok(inWindow.filter(Boolean).length <= 3);
  // Who came near by the scrolling has been drawn once by then.
  const [first] = inWindow.flatMap((is, i) => (is ? [i] : []));
  const passes = (seconds) =>
    page.waitForFunction(
      ([i, t]) => document.querySelectorAll("backcut-set")[i].currentTime > t,
      [first, seconds],
      { polling: 20 },
    );
  await passes(0.2);
  await countDrawing(page);
  const before = await standing(page);
  await passes(before.times[first] + 0.5);
  const drawn = await page.evaluate(() => globalThis.drawn);
  assert.deepEqual(
    drawn.map((count) => count > 0),
    inWindow,
  );
  // Whoever is not seen waits.
  const after = await standing(page);
  const gone = after.times.map((time, i) => time - before.times[i]);
  assert.deepEqual(
    gone.map((seconds) => seconds > 0),
    inWindow,
  );
  const requested = after.frames - before.frames;
  const most = Math.max(...gone);
  assert.ok(requested <= most * 61 + 10, `${requested} frames in ${most} s`);
});

/** How many frames are asked for while two hundred turns of the page's loop pass. */
const askedMeanwhile = (page) =>
  page.evaluate(async () => {
    const before = globalThis.frames_requested;
    const channel = new MessageChannel();
    for (let i = 0; i < 200; i += 1) {
      await new Promise((resolve) => {
        channel.port1.onmessage = resolve;
        channel.port2.postMessage(0);
      });
    }
    return globalThis.frames_requested - before;
  });

test("paused, ended or off screen no frame is asked for; back in the window it goes on", async (t) => {
  const { page } = await open(t, { body: `${TOLD}${'<p class="far"></p>'}` });
  await refined(page);
  assert.equal(await askedMeanwhile(page), 0, "before it is played");
  await page.evaluate(() => document.querySelector("backcut-set").play());
  await event(page, "timeupdate");
  await page.evaluate(() => document.querySelector("backcut-set").pause());
  assert.equal(await askedMeanwhile(page), 0, "paused");
  const ended = event(page, "ended");
  await page.evaluate(() => {
    const set = document.querySelector("backcut-set");
    set.currentTime = set.duration - 0.03;
    set.play();
  });
  await ended;
  assert.equal(await askedMeanwhile(page), 0, "ended");
  await page.evaluate(() => {
    const set = document.querySelector("backcut-set");
    document.querySelector(".far").style.height = "3000px";
    set.play();
    // Just out of the window: near enough to be drawn already.
    scrollTo(0, set.getBoundingClientRect().bottom + scrollY + 20);
  });
  await page.waitForFunction(() => {
    const now = document.querySelector("backcut-set").currentTime;
    globalThis.still = now === globalThis.before ? globalThis.still + 1 : 0;
    globalThis.before = now;
    return globalThis.still >= 10;
  });
  assert.equal(await askedMeanwhile(page), 0, "off screen");
  assert.equal(await property(page, "paused"), false);
  const time = await property(page, "currentTime");
  await page.evaluate(() => scrollTo(0, 0));
  await page.waitForFunction((t) => document.querySelector("backcut-set").currentTime > t, time);
});

test("moved by moveBefore it plays on, and nothing is lost", async (t) => {
  const { page } = await open(t, { body: `${TOLD}<section></section>` });
  const kept = await page.evaluate(async () => {
    const set = document.querySelector("backcut-set");
    set.currentTime = 1;
    await set.play();
    const events = [];
    for (const name of ["pause", "loadedmetadata", "error"]) {
      set.addEventListener(name, () => events.push(name));
    }
    const play = set.frame;
    document.querySelector("section").moveBefore(set, null);
    return [set.parentElement.localName, set.paused, set.currentTime >= 1, !!play, events];
  });
  assert.deepEqual(kept, ["section", false, true, true, []]);
  await page.waitForFunction(() => document.querySelector("backcut-set").currentTime > 1.2);
});

test("in a box of no size it is no error, and it is drawn once the box has one", async (t) => {
  const { page, problems } = await open(t, { body: "<div></div>", wait: false });
  await page.evaluate(async (html) => {
    const box = document.querySelector("div");
    box.style.cssText = "width: 0; height: 0; overflow: hidden";
    box.innerHTML = html;
    const set = document.querySelector("backcut-set");
    await set.play();
    set.currentTime = 1;
    box.style.cssText = "";
  }, TOLD);
  await page.waitForFunction(
    () =>
      document.querySelector("backcut-set").shadowRoot.querySelectorAll("canvas")[1].width > 300,
  );
  assert.ok((await pixels(page, 1)).painted);
  assert.deepEqual(problems, []);
});

test("however large it is shown, no layer has more than four million pixels", async (t) => {
  const viewport = { width: 3600, height: 2400 };
  const { page } = await open(t, { body: TOLD, viewport, deviceScaleFactor: 2 });
  await page.evaluate(() => {
    Element.prototype.requestFullscreen = () => Promise.reject(new Error("not allowed"));
  });
  await refined(page);
  await page.getByRole("button", { name: "Full screen" }).click();
  await page.getByRole("button", { name: "Close", exact: true }).waitFor();
  await page.waitForFunction(
    () => document.querySelector("backcut-set").shadowRoot.querySelector("canvas").width > 2000,
  );
  const sizes = await page.evaluate(() =>
    [...document.querySelector("backcut-set").shadowRoot.querySelectorAll("canvas")].map(
      ({ width, height }) => width * height,
    ),
  );
  assert.ok(Math.max(...sizes) > 3.9e6, "the court would like more");
  for (const size of sizes) assert.ok(size < 4.01e6, `${size}`);
});

test("less motion is followed while the page is open, and given up again", async (t) => {
  const { page } = await open(t, { body: TOLD });
  // It is to be in its first beat still.
  await pace(page, 0.01);
  await page.evaluate(() => document.querySelector("backcut-set").play());
  const paused = event(page, "pause");
  await page.emulateMedia({ reducedMotion: "reduce" });
  await paused;
  await page.getByRole("button", { name: "Next beat" }).first().waitFor();
  const beat = await property(page, "beat");
  await page.evaluate(() => document.querySelector("backcut-set").play());
  assert.equal(await property(page, "beat"), beat + 1);
  assert.equal(await property(page, "paused"), true);
  await page.emulateMedia({ reducedMotion: "no-preference" });
  const play = page.getByRole("button", { name: "Play", exact: true });
  await play.click();
  assert.equal(await property(page, "paused"), false);
});

test("first and last picture are those of 0 and of the duration, played to or sought", async (t) => {
  const { page } = await open(t, { body: TOLD });
  const duration = await property(page, "duration");
  const first = await pixels(page, 1);
  const ended = event(page, "ended");
  await page.evaluate(() => {
    const set = document.querySelector("backcut-set");
    set.currentTime = set.duration - 0.2;
    set.play();
  });
  await ended;
  const played = await pixels(page, 1);
  const at = async (time) => {
    await page.evaluate((t) => (document.querySelector("backcut-set").currentTime = t), time);
    return pixels(page, 1);
  };
  assert.deepEqual(await at(0), first);
  assert.deepEqual(await at(duration), played);
  assert.notEqual(played.hash, first.hash);
  // Before the beginning and after the end there is nothing else.
  assert.deepEqual(await at(-5), first);
  assert.deepEqual(await at(duration + 5), played);
});
