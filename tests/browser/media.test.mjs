// The element beside a real media element: the same things are done to both in one page, and both
// must tell the same. Words and order are the HTML Living Standard's, section 4.8.11 "Media elements";
// the browser's own `<audio>` is the reference, so nothing here is from memory.

import assert from "node:assert/strict";
import { test } from "node:test";
import { TAG, inBrowser, pixels, property } from "./page.mjs";

const browser = inBrowser();

/** Four seconds of silence as a WAV file: 8 bits, 8 kHz, one channel. */
function silence() {
  const [rate, seconds] = [8000, 4];
  const samples = Buffer.alloc(rate * seconds, 0x80);
  const head = Buffer.alloc(44);
  head.write("RIFF", 0);
  head.writeUInt32LE(36 + samples.length, 4);
  head.write("WAVEfmt ", 8);
  head.writeUInt32LE(16, 16);
  head.writeUInt16LE(1, 20); // PCM
  head.writeUInt16LE(1, 22); // channels
  head.writeUInt32LE(rate, 24);
  head.writeUInt32LE(rate, 28); // bytes a second
  head.writeUInt16LE(1, 32); // bytes a frame
  head.writeUInt16LE(8, 34); // bits a sample
  head.write("data", 36);
  head.writeUInt32LE(samples.length, 40);
  return Buffer.concat([head, samples]);
}

/** What both can do; `made` is a new one, `heard` the events since it was last asked. */
const SCENES = {
  "before there is anything": ({ made }) => {
    const { currentTime, duration, paused, ended, seeking, playbackRate, readyState, error } = made;
    const { autoplay, loop } = made;
    return {
      currentTime,
      duration,
      paused,
      ended,
      seeking,
      playbackRate,
      readyState,
      error,
      autoplay,
      loop,
    };
  },
  "loading tells the duration, and no event comes before the next task": async ({
    made,
    load,
    heard,
  }) => {
    load();
    const atOnce = heard();
    await new Promise((resolve) => made.addEventListener("loadedmetadata", resolve));
    return { atOnce, then: heard(), known: made.duration > 1, ready: made.readyState >= 1 };
  },
  "seeking while it stands": async ({ made, loaded, heard, event }) => {
    await loaded();
    const seeked = event("seeked");
    made.currentTime = 1.5;
    const atOnce = [made.currentTime, heard()];
    await seeked;
    return {
      atOnce,
      then: heard(),
      time: made.currentTime,
      seeking: made.seeking,
      paused: made.paused,
    };
  },
  "seeking before the beginning and after the end": async ({ made, loaded, event }) => {
    await loaded();
    const times = [];
    for (const time of [-5, 1e6]) {
      const seeked = event("seeked");
      made.currentTime = time;
      await seeked;
      times.push(made.currentTime === (time < 0 ? 0 : made.duration));
    }
    // A film may take another moment to see that it is there.
    while (!made.ended) await new Promise(requestAnimationFrame);
    return { times, ended: made.ended };
  },
  "a time that is none": async ({ made, loaded }) => {
    await loaded();
    return [NaN, Infinity, "soon"].map((time) => {
      try {
        made.currentTime = time;
      } catch (error) {
        return error.name;
      }
      return "taken";
    });
  },
  "playing and pausing": async ({ made, loaded, heard, event }) => {
    await loaded();
    const playing = made.play();
    const atOnce = [made.paused, heard()];
    await playing;
    const then = heard();
    const paused = event("pause");
    made.pause();
    const stands = [made.paused, heard()];
    await paused;
    return { atOnce, then, stands, last: heard() };
  },
  "to play what plays, and to pause what stands, tells nothing": async ({
    made,
    loaded,
    heard,
  }) => {
    await loaded();
    made.pause();
    await made.play();
    heard();
    await made.play();
    return heard();
  },
  "seeking while it plays": async ({ made, loaded, heard, event }) => {
    await loaded();
    await made.play();
    heard();
    const seeked = event("seeked");
    made.currentTime = 1;
    await seeked;
    return { told: heard(), paused: made.paused, later: made.currentTime >= 1 };
  },
  "reaching the end": async ({ made, loaded, heard, event }) => {
    await loaded();
    const seeked = event("seeked");
    made.currentTime = made.duration - 0.2;
    await seeked;
    await made.play();
    heard();
    await event("ended");
    const { paused, ended, currentTime, duration } = made;
    return { told: heard(), paused, ended, last: currentTime === duration };
  },
  "playing on from the end begins anew": async ({ made, loaded, event }) => {
    await loaded();
    const seeked = event("seeked");
    made.currentTime = made.duration - 0.2;
    await seeked;
    await made.play();
    await event("ended");
    const ended = made.ended;
    await made.play();
    return { ended, then: made.ended, early: made.currentTime < 1, paused: made.paused };
  },
  "with `loop` there is no end": async ({ made, loaded, heard, event }) => {
    await loaded();
    made.loop = true;
    let seeked = event("seeked");
    made.currentTime = made.duration - 0.2;
    await seeked;
    await made.play();
    heard();
    seeked = event("seeked");
    await seeked;
    return { told: heard(), ended: made.ended, paused: made.paused, early: made.currentTime < 1 };
  },
  "another speed": async ({ made, loaded, heard, event }) => {
    await loaded();
    const changed = event("ratechange");
    made.playbackRate = 0.5;
    const rate = made.playbackRate;
    await changed;
    made.playbackRate = 0.5;
    await new Promise((resolve) => setTimeout(resolve));
    return { rate, told: heard() };
  },
  "no speed, and speeds that are none": async ({ made, loaded }) => {
    await loaded();
    return [0, -1, NaN, Infinity, "fast"].map((rate) => {
      try {
        made.playbackRate = rate;
      } catch (error) {
        return error.name;
      }
      return made.playbackRate;
    });
  },
  "play asked for before it is loaded is kept": async ({ made, load, event }) => {
    load();
    const playing = event("play");
    const promise = made.play();
    const paused = made.paused;
    await Promise.all([promise, playing]);
    return { paused, then: made.paused };
  },
  "play that is taken back before it is loaded is rejected": async ({ made, load }) => {
    load();
    const promise = made.play();
    made.pause();
    return promise.then(
      () => "played",
      (error) => error.name,
    );
  },
  "what does not come": async ({ made, event }) => {
    const failed = event("error");
    made.src = "/nowhere";
    const rejected = await made.play().then(
      () => false,
      (error) => error instanceof Error || error instanceof DOMException,
    );
    await failed;
    return {
      rejected,
      error: made.error !== null,
      said: made.error.message !== "",
      ready: made.readyState,
      again: ((made.src = "/elsewhere"), made.error),
    };
  },
  "attributes and properties": ({ made }) => {
    made.src = "/a.json";
    made.autoplay = true;
    made.loop = true;
    const attributes = ["autoplay", "loop"].map((name) => made.getAttribute(name));
    made.removeAttribute("loop");
    made.setAttribute("autoplay", "false");
    // As frameworks do it that hand on what they were not given.
    for (const nothing of [undefined, null, "", 0]) {
      made.loop = nothing;
      attributes.push(made.loop);
    }
    return { attributes, src: made.getAttribute("src"), loop: made.loop, autoplay: made.autoplay };
  },
};

/** Events that both have. How often a time is told is left to the browser. */
const EVENTS = [
  "loadedmetadata",
  "play",
  "pause",
  "seeking",
  "seeked",
  "ratechange",
  "ended",
  "error",
];

/** Runs in the page: does a scene to a new element of that name, and says what it told. */
async function act({ name, src, scene, events }) {
  const made = document.createElement(name);
  made.muted = true;
  const told = [];
  for (const type of events) made.addEventListener(type, () => told.push(type));
  const heard = () => told.splice(0).join(" ");
  const event = (type) =>
    new Promise((resolve) => made.addEventListener(type, resolve, { once: true }));
  const load = () => {
    made.src = src;
    document.querySelector("main").append(made);
  };
  const loaded = async () => {
    const known = event("loadedmetadata");
    load();
    await known;
    // A set is whole once it is known; a film still has to come.
    if (made.readyState < 4) await event("canplaythrough");
    heard();
  };
  document.querySelector("main").append(made);
  const result = await new Function(`return (${scene})`)()({ made, load, loaded, heard, event });
  made.pause();
  made.remove();
  return result;
}

for (const [title, scene] of Object.entries(SCENES)) {
  test(`like a media element: ${title}`, async (t) => {
    browser.server.answers["/silence.wav"] = { type: "audio/wav", body: silence() };
    // The scenes are handed over as text.
    const policy = "default-src 'self'; script-src 'self' 'unsafe-eval'";
    const { page } = await browser.open(t, {
      body: "<p>Beside each other</p>",
      wait: false,
      policy,
    });
    await page.waitForFunction(() => customElements.get("backcut-set"));
    const handed = { scene: scene.toString(), events: EVENTS };
    const film = await page.evaluate(act, { ...handed, name: "audio", src: "/silence.wav" });
    const set = await page.evaluate(act, { ...handed, name: "backcut-set", src: "/told.json" });
    assert.deepEqual(set, film);
  });
}

test("late listeners lose nothing: what was told can be read", async (t) => {
  const { page } = await browser.open(t);
  assert.equal(await property(page, "readyState"), 4);
  await page.evaluate(() => document.querySelector("backcut-set").ready);
  assert.equal(await property(page, "error"), null);
});

test("what failed can be read later too, until something else is asked for", async (t) => {
  const { page } = await browser.open(t, {
    body: '<backcut-set src="/nowhere"></backcut-set>',
    wait: false,
  });
  await page.getByRole("alert").waitFor();
  const told = await page.evaluate(async () => {
    const set = document.querySelector("backcut-set");
    const late = await set.ready.catch((reason) => reason === set.error);
    set.src = "/set.json";
    const error = set.error;
    await set.play();
    await set.ready;
    return { late, error, paused: set.paused };
  });
  assert.deepEqual(told, { late: true, error: null, paused: false });
});

test("every frame that is drawn can be had, with its time", async (t) => {
  const { page } = await browser.open(t);
  const frames = await page.evaluate(async () => {
    const set = document.querySelector("backcut-set");
    const seen = [];
    const next = () =>
      new Promise((resolve) =>
        set.requestVideoFrameCallback((now, frame) => resolve([now, frame])),
      );
    await set.play();
    for (let i = 0; i < 5; i += 1) seen.push((await next())[1].mediaTime);
    set.pause();
    const cancelled = set.requestVideoFrameCallback(() => seen.push(-1));
    set.cancelVideoFrameCallback(cancelled);
    const sought = next();
    set.currentTime = 1.25;
    seen.push((await sought)[1].mediaTime);
    return seen;
  });
  assert.equal(frames.length, 6);
  assert.ok(
    frames.slice(0, 5).every((time, i) => i === 0 || time > frames[i - 1]),
    `${frames}`,
  );
  assert.equal(frames[5], 1.25);
});

test("a lazy set is asked for once it comes near", async (t) => {
  const tag = '<backcut-set loading="lazy" src="/told.json"></backcut-set>';
  const body = `${tag}<div style="block-size: 5000px"></div><div id="far">${tag}</div>`;
  const policy = "default-src 'self' 'unsafe-inline'; script-src 'self' 'wasm-unsafe-eval'";
  const { page } = await browser.open(t, { body, wait: false, policy });
  const asked = [];
  page.on("request", (request) => {
    if (request.url().endsWith("told.json")) asked.push(request.url());
  });
  await page.waitForFunction(() => document.querySelector("backcut-set").readyState === 4);
  const far = "#far backcut-set";
  assert.equal(await page.evaluate((set) => document.querySelector(set).readyState, far), 0);
  const before = asked.length;
  await page.evaluate((set) => document.querySelector(set).scrollIntoView(), far);
  await page.waitForFunction((set) => document.querySelector(set).readyState === 4, far);
  assert.equal(asked.length, before + 1);
});

test("a lazy set that is far off is asked for once it is told not to be lazy", async (t) => {
  const body = '<div style="block-size: 5000px"></div><backcut-set loading="lazy"></backcut-set>';
  const policy =
    "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; style-src 'unsafe-inline'";
  const { page } = await browser.open(t, { body, wait: false, policy });
  const asked = [];
  page.on("request", (request) => asked.push(new URL(request.url()).pathname));
  await page.waitForFunction(() => customElements.get("backcut-set"));
  await page.evaluate(async () => {
    const set = document.querySelector("backcut-set");
    set.src = "/set.json";
    await fetch("/told.json");
    set.court = "nba";
    await fetch("/told.json");
  });
  assert.ok(!asked.includes("/set.json"), `${asked}`);
  await page.evaluate(() => (document.querySelector("backcut-set").loading = "eager"));
  await page.waitForFunction(() => document.querySelector("backcut-set").readyState === 4);
});

test("a poster stands for the court until the set is there, and where it never is", async (t) => {
  browser.server.answers["/court.svg"] = {
    type: "image/svg+xml",
    body: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 760 472"><path d="M0 0h760v472z"/></svg>',
  };
  const body = '<backcut-set src="/nowhere" poster="/court.svg"></backcut-set>';
  const { page } = await browser.open(t, { body, wait: false });
  const picture = page.locator("backcut-set slot img");
  await page.getByRole("alert").waitFor();
  assert.ok((await picture.boundingBox()).height > 300);
  await page.evaluate(() => (document.querySelector("backcut-set").src = "/set.json"));
  await page.waitForFunction(() => document.querySelector("backcut-set").readyState === 4);
  assert.equal(await picture.isVisible(), false);
  assert.ok((await pixels(page, 0)).hash);
});
