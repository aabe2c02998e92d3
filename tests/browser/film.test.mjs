// The user's own film beside a set: how far the two are apart, what ties them, and that the film
// goes nowhere.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import { join } from "node:path";
import { test } from "node:test";
import { root } from "../../.ci/process.mjs";
import { clip, pictureOf } from "./clip.mjs";
import { SET, audit, inBrowser, property, refined } from "./page.mjs";
import { POLICY } from "./server.mjs";

const browser = inBrowser();
/** One picture of a film, seconds. */
const PICTURE = 1 / 30;
/** Half a picture: as near as the number of a picture tells an instant. */
const HALF = PICTURE / 2;
const SECONDS = 8;
/** The set begins a second into the film; what was filmed is slow at first, then too quick. */
const MARKS = [
  { t: 0, film: 1 },
  { t: 1.2, film: 2.6 },
  { t: 3, film: 4 },
];
const TAG = '<backcut-set src="/filmed.json" film="/film.webm"></backcut-set>';

/** The same film for all, made in the first page that comes by. */
let film;

/** A page with a set that has marks, and a film on the server. */
async function open(t, { set = { ...SET, film: MARKS }, ...options } = {}) {
  const { answers } = browser.server;
  answers["/filmed.json"] = { type: "application/json", body: JSON.stringify(set) };
  const opened = await browser.open(t, { body: TAG, ...options });
  film ??= await clip(opened.page, SECONDS);
  answers["/film.webm"] = { type: "video/webm", body: film };
  await refined(opened.page);
  return opened;
}

const button = (page, name) => page.getByRole("button", { name, exact: true });
const press = (page, name) => button(page, name).click();
const status = (page) => page.locator(".film-status");

/** The same with the film beside the set. */
async function filmed(t, options) {
  const opened = await open(t, options);
  await press(opened.page, "Film");
  await settled(opened.page);
  return { ...opened, video: opened.page.locator("video") };
}

/** Resolves once the film shows the instant that it was sought at, and is not sought again. */
async function settled(page) {
  await page.evaluate(() => (globalThis.still = 0));
  await page.waitForFunction(() => {
    const video = document.querySelector("backcut-set").shadowRoot.querySelector("video");
    const there = video && video.readyState >= 2 && !video.seeking;
    globalThis.still = there ? globalThis.still + 1 : 0;
    return globalThis.still > 2;
  });
}

/** Seeks in the set, and waits for the film. */
async function seek(page, time) {
  await page.evaluate((t) => {
    document.querySelector("backcut-set").currentTime = t;
  }, time);
  await settled(page);
}

/** The film's instant at one of the set, worked out anew. */
function filmAt(t, marks = MARKS) {
  const last = Math.max(
    1,
    marks.findIndex((mark) => mark.t > t),
  );
  const i = marks.some((mark) => mark.t > t) ? last : marks.length - 1;
  const [a, b] = [marks[i - 1], marks[i]];
  return a.film + ((t - a.t) * (b.film - a.film)) / (b.t - a.t);
}

/** The instant that a film shows, from the number of its picture, seconds. */
const shown = async (video) => (await pictureOf(video)) * PICTURE;

/**
 * Plays until the set stands, or for so many pictures; of each picture of the film, as it is told by
 * the browser, how far the set is from it once both are drawn, seconds.
 */
async function drift(page, { rate = 1, from = 0, pictures = Infinity } = {}) {
  await page.evaluate(
    ({ rate, from }) => {
      const set = document.querySelector("backcut-set");
      set.pause();
      Object.assign(set, { currentTime: from, playbackRate: rate });
    },
    { rate, from },
  );
  await settled(page);
  const pairs = await page.evaluate(async (pictures) => {
    const set = document.querySelector("backcut-set");
    const video = set.shadowRoot.querySelector("video");
    const pairs = [];
    await new Promise((done) => {
      const next = (_, { mediaTime }) => {
        // A picture from before the film was sought may still come: it is not where the film is.
        if (pairs.length === 0 && Math.abs(mediaTime - video.currentTime) > 0.3) {
          video.requestVideoFrameCallback(next);
          return;
        }
        // The set is drawn in this same frame, after this.
        requestAnimationFrame(() => {
          if (!set.paused) pairs.push([set.currentTime, mediaTime]);
          if (pairs.length >= pictures) done();
        });
        video.requestVideoFrameCallback(next);
      };
      video.requestVideoFrameCallback(next);
      set.addEventListener("pause", done, { once: true });
      set.play();
    });
    return pairs;
  }, pictures);
  const turned = MARKS.map(({ t, film }) => ({ t: film, film: t }));
  return pairs.map(([time, mediaTime]) => time - filmAt(mediaTime, turned));
}

/** Has the page keep in `globalThis.picture` which picture the browser told of last, seconds. */
const watched = (page) =>
  page.evaluate(() => {
    const video = document.querySelector("backcut-set").shadowRoot.querySelector("video");
    const seen = (_, { mediaTime }) => {
      globalThis.picture = mediaTime;
      video.requestVideoFrameCallback(seen);
    };
    video.requestVideoFrameCallback(seen);
  });

/** Whether the film stands, as soon as the set is past an instant. */
async function standsPast(page, time) {
  const found = await page.waitForFunction((t) => {
    const set = document.querySelector("backcut-set");
    return set.currentTime > t && { stands: set.shadowRoot.querySelector("video").paused };
  }, time);
  return (await found.jsonValue()).stands;
}

/** That they were watched for a while, and were never a picture apart. */
function together(apart, least = 20) {
  assert.ok(apart.length >= least, `${apart.length} pictures`);
  const worst = Math.max(...apart.map(Math.abs));
  assert.ok(worst < PICTURE, `${worst} s apart`);
}

// -- together -------------------------------------------------------------------------------------

test("a film that the page names plays with its set, never a picture apart", async (t) => {
  const { page, problems } = await filmed(t);
  together(await drift(page));
  assert.equal(await property(page, "ended"), true);
  assert.deepEqual(problems, []);
});

test("at half speed as well, and after the reader looked for an instant", async (t) => {
  const { page } = await filmed(t);
  together(await drift(page, { rate: 0.5, from: 2.2, pictures: 25 }));
  await page.evaluate(() => {
    // It plays on from elsewhere, back and forth.
    const set = document.querySelector("backcut-set");
    for (const time of [3.9, 0.2, 1.1]) set.currentTime = time;
  });
  await settled(page);
  together(await drift(page, { rate: 1, from: 0.4, pictures: 25 }));
});

test("sought again and again while it plays, the set goes on from where it was asked to be", async (t) => {
  const { page } = await filmed(t);
  const ahead = await page.evaluate(async () => {
    const set = document.querySelector("backcut-set");
    const frame = () => new Promise((done) => requestAnimationFrame(done));
    const ahead = [];
    await set.play();
    for (let i = 0; i < 60; i += 1) {
      // To and fro, again before it can have arrived, at every distance from that.
      const asked = [3.9, 0.2, 1.1, 0.4][i % 4];
      set.currentTime = asked;
      const since = performance.now();
      for (let j = 0; j <= i % 7; j += 1) {
        await frame();
        ahead.push(set.currentTime - asked - (performance.now() - since) / 1000);
      }
    }
    return ahead;
  });
  assert.ok(Math.max(...ahead) < 2 * PICTURE, `${Math.max(...ahead)} s ahead`);
});

test("in a loop both start again", async (t) => {
  const { page, video } = await filmed(t);
  await page.evaluate(() => (document.querySelector("backcut-set").loop = true));
  const again = page.evaluate(
    () =>
      new Promise((done) =>
        document.querySelector("backcut-set").addEventListener("seeked", done, { once: true }),
      ),
  );
  await seek(page, 4.2);
  await again;
  const looped = page.evaluate(
    () =>
      new Promise((done) => {
        const set = document.querySelector("backcut-set");
        set.addEventListener("seeked", () => done(set.currentTime), { once: true });
        set.play();
        // The page is busy while the film goes on past the end of the set.
        const stall = () => {
          if (set.currentTime < set.duration - 0.1) return requestAnimationFrame(stall);
          const since = performance.now();
          while (performance.now() - since < 500);
        };
        stall();
      }),
  );
  assert.equal(await looped, 0);
  together(await drift(page, { from: 0.1, pictures: 20 }));
  await page.evaluate(() => document.querySelector("backcut-set").pause());
  await settled(page);
  const time = await property(page, "currentTime");
  assert.ok(Math.abs((await shown(video)) - filmAt(time)) <= PICTURE);
});

test("a film without marks starts with the set and runs at its speed", async (t) => {
  const { page, video } = await filmed(t, { set: SET });
  assert.equal(await page.getByText("Not tied yet").isVisible(), true);
  await seek(page, 2.515);
  assert.equal(await pictureOf(video), 75);
});

test("whoever looks for an instant in the set has it in the film", async (t) => {
  const { page, video } = await filmed(t);
  for (const time of [0.6, 2.1, 4]) {
    await seek(page, time);
    assert.ok(Math.abs((await shown(video)) + HALF - filmAt(time)) <= HALF + 0.002, `${time}`);
  }
});

test("frame by frame they go together, by the set's buttons or the film's", async (t) => {
  const { page, video } = await filmed(t);
  await seek(page, 2);
  await press(page, "Next frame");
  await settled(page);
  assert.ok(Math.abs((await property(page, "currentTime")) - 2 - PICTURE) < 1e-9);
  assert.ok(Math.abs((await shown(video)) + HALF - filmAt(2 + PICTURE)) <= HALF + 0.002);
  await seek(page, 0.6);
  const before = await pictureOf(video);
  for (const by of [1, 2]) {
    await press(page, "Film: next frame");
    await settled(page);
    assert.equal(await pictureOf(video), before + by);
  }
  const time = await property(page, "currentTime");
  assert.ok(Math.abs(filmAt(time) - filmAt(0.6) - 2 * PICTURE) < 1e-6, `${time}`);
});

test("a finger that holds the time holds the film", async (t) => {
  const { page, video } = await filmed(t);
  await page.evaluate(() => document.querySelector("backcut-set").play());
  await page.waitForFunction(() => document.querySelector("backcut-set").currentTime > 0.3);
  const { x, y, width, height } = await page.locator(".strip").boundingBox();
  await page.mouse.move(x + width * 0.5, y + height / 2);
  await page.mouse.down();
  await page.mouse.move(x + width * 0.6, y + height / 2);
  await settled(page);
  assert.equal(await video.evaluate((v) => v.paused), true);
  const held = await property(page, "currentTime");
  assert.ok(Math.abs((await shown(video)) + HALF - filmAt(held)) <= HALF + 0.002);
  await page.mouse.up();
  assert.equal(await standsPast(page, held), false);
});

test("where the film stalls the set waits, and goes on with it", async (t) => {
  const { page } = await open(t, { body: "" });
  let release;
  const rest = new Promise((resolve) => (release = resolve));
  // All but its last seconds come at once.
  const half = Math.round(film.length / 2);
  const slow = createServer(async (_, response) => {
    response.writeHead(200, { "content-type": "video/webm", "content-length": film.length });
    response.write(film.subarray(0, half));
    await rest;
    response.end(film.subarray(half));
  });
  await new Promise((resolve) => slow.listen(0, "127.0.0.1", resolve));
  t.after(() => slow.close());
  const elsewhere = `http://127.0.0.1:${slow.address().port}`;
  const opened = await filmed(t, {
    body: TAG.replace("/film.webm", `${elsewhere}/film.webm`),
    policy: `${POLICY}; media-src ${elsewhere}`,
  });
  await page.close();
  await watched(opened.page);
  await opened.page.evaluate(
    () =>
      new Promise((done) => {
        const set = document.querySelector("backcut-set");
        const video = set.shadowRoot.querySelector("video");
        // It may wait at its start as well: stalled it is where it stands for many frames.
        let [was, still] = [-1, 0];
        const look = () => {
          still = video.currentTime === was && was > 1.5 ? still + 1 : 0;
          was = video.currentTime;
          if (still >= 20) done();
          else requestAnimationFrame(look);
        };
        set.play();
        look();
      }),
  );
  // It stands, and plays all the same: it will go on by itself.
  const stood = await opened.page.evaluate(async () => {
    const set = document.querySelector("backcut-set");
    const video = set.shadowRoot.querySelector("video");
    const seen = [];
    for (let i = 0; i < 90; i += 1) {
      await new Promise((done) => requestAnimationFrame(done));
      seen.push([set.currentTime, video.currentTime]);
    }
    return { paused: set.paused, early: seen[45], late: seen[89] };
  });
  assert.equal(stood.paused, false);
  assert.deepEqual(stood.early, stood.late);
  // Its clock may be further than the last picture that came.
  const [time] = stood.late;
  const at = await opened.page.evaluate(() => globalThis.picture);
  assert.ok(Math.abs(filmAt(time) - at) < 2 * PICTURE, `${filmAt(time)} of ${at}`);
  release();
  await opened.page.waitForFunction(() => document.querySelector("backcut-set").ended);
});

test("where the film ends the set waits; asked again, it goes on alone", async (t) => {
  const { page, video } = await filmed(t, { set: { ...SET, film: [{ t: 0, film: 5 }] } });
  await watched(page);
  await page.evaluate(() => document.querySelector("backcut-set").play());
  await status(page).filter({ hasText: "The film ends here" }).waitFor();
  const stood = await property(page, "currentTime");
  // At the last picture that was shown: where processors are busy that is not the film's last.
  const last = await page.evaluate(() => globalThis.picture);
  assert.ok(Math.abs(5 + stood - last) < 2 * PICTURE, `${stood}, ${last}`);
  assert.equal(await video.evaluate((v) => v.ended), true);
  assert.equal(await property(page, "paused"), true);
  await page.evaluate(() => document.querySelector("backcut-set").play());
  await page.waitForFunction(() => document.querySelector("backcut-set").ended);
});

test("before the film begins the set goes alone, then with it", async (t) => {
  const { page, video } = await filmed(t, { set: { ...SET, film: [{ t: 2, film: 0.5 }] } });
  await page.evaluate(() => document.querySelector("backcut-set").play());
  assert.equal(await standsPast(page, 0.8), true);
  await page.waitForFunction(
    () => document.querySelector("backcut-set").shadowRoot.querySelector("video").currentTime > 1,
  );
  await page.evaluate(() => document.querySelector("backcut-set").pause());
  await settled(page);
  const time = await property(page, "currentTime");
  assert.ok(Math.abs((await shown(video)) + HALF - (time - 1.5)) <= PICTURE);
});

// -- marks ----------------------------------------------------------------------------------------

test("a reader ties instants by moving the film alone, and the set file keeps them", async (t) => {
  const { page, video } = await filmed(t, {
    set: SET,
    permissions: ["clipboard-read", "clipboard-write"],
  });
  const tie = async (time, film) => {
    await seek(page, time);
    await press(page, "Move the film alone");
    await page.getByRole("slider", { name: "Film" }).fill(String(film));
    await settled(page);
    assert.ok(Math.abs((await property(page, "currentTime")) - time) < 1e-9);
    await press(page, "Mark this");
  };
  await tie(0, 1);
  const marks = page.locator(".film-marks li");
  assert.match(await marks.first().innerText(), /Both are counted from here\.\s+Film 1\.00 s/);
  // One that is set where 2 catches, by the set's own clock.
  const caught = await page.evaluate(() => {
    const set = document.querySelector("backcut-set");
    for (let time = 0; time < set.duration; time += 0.01) {
      set.currentTime = time;
      if (set.frame[4] === 2) return time;
    }
  });
  await tie(caught, Math.round((caught + 1.6) / PICTURE) * PICTURE);
  assert.match(await marks.nth(1).innerText(), /Ours was 0\.6 s late here: 2 catches\./);
  assert.ok(Math.abs((await shown(video)) - caught - 1.6) <= PICTURE, "it stays where it was tied");
  // An instant later in the set cannot be earlier in the film.
  await tie(3, 1.5);
  assert.match(await status(page).innerText(), /run backwards/);
  assert.equal(await marks.count(), 2);
  await press(page, "Move the film alone");
  await press(page, "Copy set file with the marks");
  await status(page).filter({ hasText: "copied" }).waitFor();
  const text = await page.evaluate(() => navigator.clipboard.readText());
  const copied = JSON.parse(text).film;
  assert.deepEqual(copied[0], { t: 0, film: 1 });
  assert.ok(Math.abs(copied[1].film - caught - 1.6) < PICTURE);
  const again = await filmed(t, { set: JSON.parse(text) });
  assert.equal(await again.page.locator(".film-marks li").count(), 2);
  await again.page.getByRole("button", { name: "Remove 0.00 s" }).click();
  assert.equal(await again.page.locator(".film-marks li").count(), 1);
});

test("marks stay when the set is shown otherwise, and lead to their instants", async (t) => {
  const { page } = await filmed(t);
  await page.getByRole("button", { name: "Remove 1.20 s" }).click();
  const again = page.evaluate(
    () =>
      new Promise((done) =>
        document
          .querySelector("backcut-set")
          .addEventListener("loadedmetadata", done, { once: true }),
      ),
  );
  await page.evaluate(() => (document.querySelector("backcut-set").mirrored = true));
  await again;
  const marks = page.locator(".film-marks li");
  await page.waitForFunction(
    () =>
      document.querySelector("backcut-set").shadowRoot.querySelectorAll(".film-marks li").length ===
      2,
  );
  await marks.nth(1).getByRole("button", { name: "3.00 s", exact: true }).click();
  assert.equal(await property(page, "currentTime"), 3);
});

test("a stretch that is shown slowly slows the film as well", async (t) => {
  const slow = [
    { from: { id: "turn", edge: "start" }, to: { id: "turn", edge: "end" }, rate: 0.5 },
  ];
  const [enter, cut, ...beats] = SET.beats;
  const [turn, ...others] = cut.actions;
  const beatsWith = [enter, { ...cut, actions: [{ ...turn, id: "turn" }, ...others] }, ...beats];
  const { page } = await filmed(t, { set: { ...SET, beats: beatsWith, film: MARKS, slow } });
  const [from, rate] = await page.evaluate(
    () =>
      new Promise((done) => {
        const set = document.querySelector("backcut-set");
        const video = set.shadowRoot.querySelector("video");
        video.addEventListener("ratechange", () => {
          if (video.playbackRate < 0.7) done([set.currentTime, video.playbackRate]);
        });
        set.play();
      }),
  );
  // What the marks alone make of it is never slower than 0.77.
  assert.ok(Math.abs(rate - (from < 1.2 ? 2 / 3 : 7 / 18)) < 0.01, `${rate} at ${from} s`);
  assert.ok(from > 0.5, `slow from ${from} s on`);
  await page.evaluate(() => document.querySelector("backcut-set").pause());
  together(await drift(page, { from: from - 0.3, pictures: 20 }));
});

test("a read that leaves what was filmed says so, and is tied to nothing", async (t) => {
  const text = readFileSync(join(root, "web-demo/sets/turnstile.json"), "utf8");
  const marks = [
    { t: 0, film: 0.5 },
    { t: 7, film: 7.7 },
  ];
  const { page } = await filmed(t, { set: { ...JSON.parse(text), film: marks } });
  const before = await page.locator(".film-marks p").allInnerTexts();
  await page.evaluate(() => (document.querySelector("backcut-set").read = "2"));
  await page.getByRole("combobox", { name: "What if" }).waitFor();
  await seek(page, 7);
  await status(page).filter({ hasText: "the film shows the set as drawn" }).waitFor();
  assert.deepEqual(await page.locator(".film-marks p").allInnerTexts(), before);
  await press(page, "Move the film alone");
  await press(page, "Mark this");
  await status(page).filter({ hasText: "Choose that under What if first" }).waitFor();
  assert.deepEqual(await page.locator(".film-marks p").allInnerTexts(), before);
});

// -- whose film it is -----------------------------------------------------------------------------

const OWN = () => ({ name: "ours.webm", mimeType: "video/webm", buffer: film });

test("a film that the reader picks plays, and nothing of it leaves", async (t) => {
  const { page, problems } = await open(t, {
    body: TAG.replace(' film="/film.webm"', ""),
    policy: `${POLICY}; media-src blob:`,
  });
  await press(page, "Film");
  await button(page, "Pick a film").waitFor();
  assert.deepEqual(await audit(page), []);
  const asked = [];
  page.on("request", (request) => asked.push(request.url()));
  await page.locator('input[type="file"]').setInputFiles(OWN());
  await settled(page);
  together(await drift(page, { pictures: 20 }));
  assert.deepEqual(
    asked.filter((address) => !address.startsWith("blob:")),
    [],
  );
  assert.deepEqual(problems, []);
});

test("it is there again once all is in another language", async (t) => {
  const { page } = await open(t, {
    body: TAG.replace(' film="/film.webm"', ""),
    policy: `${POLICY}; media-src blob:`,
  });
  await press(page, "Film");
  await page.locator('input[type="file"]').setInputFiles(OWN());
  await settled(page);
  await page.getByRole("button", { name: "Remove 1.20 s" }).click();
  await page.evaluate(() => (document.documentElement.lang = "es"));
  await press(page, "Vídeo");
  await settled(page);
  assert.equal(await page.locator(".film-marks li").count(), 2);
});

test("a policy that keeps such films out is named", async (t) => {
  const { page, problems } = await open(t);
  await press(page, "Film");
  await settled(page);
  await page.locator('input[type="file"]').setInputFiles(OWN());
  await status(page).filter({ hasText: "policy keeps out films of your own" }).waitFor();
  assert.ok(problems.some((problem) => problem.includes("media-src")));
  // The set plays as before.
  await page.evaluate(() => document.querySelector("backcut-set").play());
  await page.waitForFunction(() => document.querySelector("backcut-set").currentTime > 0.2);
});

test("what is no film is said to be none", async (t) => {
  const { page } = await open(t, { policy: `${POLICY}; media-src 'self' blob:` });
  browser.server.answers["/film.webm"] = { status: 404 };
  await press(page, "Film");
  await status(page).filter({ hasText: "did not come" }).waitFor();
  const text = { name: "notes.webm", mimeType: "video/webm", buffer: Buffer.from("no film") };
  await page.locator('input[type="file"]').setInputFiles(text);
  await status(page).filter({ hasText: "cannot play this film" }).waitFor();
  await page.locator('input[type="file"]').setInputFiles(OWN());
  await settled(page);
  assert.match(await status(page).innerText(), /of the film/);
});

// -- where it stands ------------------------------------------------------------------------------

const box = (page, selector) => page.locator(selector).boundingBox();

test("it stands beside the court, above it on a phone, in its corner where no window is to be had", async (t) => {
  const wide = await filmed(t);
  const before = await box(wide.page, ".strip");
  const [court, view] = [await box(wide.page, ".court"), await box(wide.page, "video")];
  assert.ok(view.x >= court.x + court.width && Math.abs(view.y - court.y) < 2);
  assert.ok(Math.abs(court.x + court.width * 2 - view.x - view.width) < 40);
  assert.ok(before.width > court.width * 1.8, "the strip keeps its width");
  assert.deepEqual(await audit(wide.page), []);
  await wide.page.evaluate(() =>
    Object.defineProperty(document, "pictureInPictureEnabled", {
      value: false,
      configurable: true,
    }),
  );
  await press(wide.page, "Picture in picture");
  const [whole, small] = [await box(wide.page, ".court"), await box(wide.page, "video")];
  assert.ok(whole.width > court.width * 1.5);
  assert.ok(small.x > whole.x + whole.width / 2 && small.y > whole.y + whole.height / 3);
  assert.ok(small.y + small.height <= whole.y + whole.height);
  await press(wide.page, "Side by side");
  assert.ok(Math.abs((await box(wide.page, ".court")).width - court.width) < 1);
  await wide.page.evaluate(() => delete document.pictureInPictureEnabled);
  await press(wide.page, "Picture in picture");
  await button(wide.page, "Side by side").waitFor();
  assert.equal(
    await wide.page.evaluate(() => document.pictureInPictureElement?.localName),
    "backcut-set",
  );
  assert.ok(Math.abs((await box(wide.page, ".court")).width - whole.width) < 1);
  await press(wide.page, "Film");
  await wide.page.waitForFunction(() => !document.pictureInPictureElement);
  assert.equal(await property(wide.page, "className"), "");
  assert.equal(await wide.page.locator("video").count(), 0);
  assert.ok(Math.abs((await box(wide.page, ".court")).width - whole.width) < 2);

  const narrow = await open(t, { viewport: { width: 390, height: 844 } });
  await press(narrow.page, "More");
  await press(narrow.page, "Film");
  await settled(narrow.page);
  const [floor, above] = [await box(narrow.page, ".court"), await box(narrow.page, "video")];
  assert.ok(above.y + above.height <= floor.y);
  assert.deepEqual(await audit(narrow.page), []);
});

test("it is silent until the reader wants to hear it", async (t) => {
  const { page, video } = await filmed(t);
  assert.equal(await video.evaluate((v) => v.muted), true);
  await press(page, "Sound");
  assert.equal(await video.evaluate((v) => v.muted), false);
  await button(page, "Sound").and(page.locator("[aria-pressed=true]")).waitFor();
});

test("put away, the set plays by its own clock", async (t) => {
  const { page, video } = await filmed(t);
  const film = await video.elementHandle();
  await press(page, "Film");
  await page.evaluate(() => document.querySelector("backcut-set").play());
  await page.waitForFunction(() => document.querySelector("backcut-set").currentTime > 0.3);
  assert.equal(await film.evaluate((v) => v.paused), true);
  await page.evaluate(() => document.querySelector("backcut-set").pause());
  await press(page, "Film");
  await settled(page);
  const time = await property(page, "currentTime");
  assert.ok(Math.abs((await shown(video)) + HALF - filmAt(time)) <= HALF + 0.002);
});

test("in another language it goes on, and all of it is in that language", async (t) => {
  const { page, problems } = await filmed(t);
  await page.evaluate(() => (document.documentElement.lang = "es"));
  await page.waitForFunction(
    () => !document.querySelector("backcut-set").shadowRoot.querySelector("video"),
  );
  assert.equal(await property(page, "className"), "");
  await press(page, "Vídeo");
  await settled(page);
  await page.waitForFunction(() =>
    document.querySelector("backcut-set").shadowRoot.querySelector(".film-marks li p"),
  );
  const words = await page.locator(".film").innerText();
  assert.match(words, /Lo nuestro llegó aquí 0,4\u00a0s tarde/);
  assert.match(words, /El vídeo se queda en este dispositivo/);
  together(await drift(page, { pictures: 20 }));
  assert.deepEqual(problems, []);
});
