// What a reader does about words, close-ups, low windows and paper.

import assert from "node:assert/strict";
import { test } from "node:test";
import {
  SET,
  TAG,
  audit,
  drawn,
  event,
  held,
  inBrowser,
  pixels,
  property,
  refined,
} from "./page.mjs";

const HANDOFF = '<backcut-set src="/web-demo/sets/breakwater.json"></backcut-set>';
/** Its words are there from the start, and with them its height. */
const TOLD = TAG.replace("set.json", "told.json");
const PHONE = { width: 390, height: 844 };

const browser = inBrowser();
const { open } = browser;

const button = (page, name) => page.getByRole("button", { name, exact: true });

// -- captions -------------------------------------------------------------------------------------

test("captions are hidden and shown again, and stay as they were when another set comes", async (t) => {
  const { page } = await open(t);
  const words = page.locator(".captions p").first();
  const captions = button(page, "Captions");
  assert.equal(await captions.getAttribute("aria-pressed"), "true");
  assert.equal(await words.isVisible(), true);
  await captions.click();
  assert.equal(await captions.getAttribute("aria-pressed"), "false");
  assert.equal(await words.isVisible(), false);
  assert.equal(await page.getByRole("heading", { name: "Enter" }).isVisible(), true);
  const loaded = event(page, "loadedmetadata");
  await page.evaluate(() => {
    document.querySelector("backcut-set").src = "/web-demo/sets/breakwater.json";
  });
  await loaded;
  assert.equal(await words.isVisible(), false);
  await captions.focus();
  await page.keyboard.press("Enter");
  assert.equal(await words.isVisible(), true);
});

test("on a phone captions and full screen are under more", async (t) => {
  const { page } = await open(t, { viewport: PHONE });
  assert.equal(await button(page, "Captions").isVisible(), false);
  await button(page, "More").click();
  for (const name of ["Captions", "Full screen"]) {
    assert.ok((await button(page, name).boundingBox()).height >= 44, name);
  }
  await button(page, "Captions").click();
  assert.equal(await page.locator(".captions").isVisible(), false);
});

/** On a phone, in the beat of a hand-off. */
async function openHandoff(t, options) {
  const opened = await open(t, { viewport: PHONE, body: HANDOFF, ...options });
  await opened.page.evaluate(() => {
    document.querySelector("backcut-set").currentTime = 2.5;
  });
  return opened;
}

// -- close-up -------------------------------------------------------------------------------------

test("a tap on the close-up fills the court with it, another goes back", async (t) => {
  const { page } = await openHandoff(t, { hasTouch: true });
  const small = button(page, "Close-up: show large");
  const box = await small.boundingBox();
  assert.ok(box.width >= 44 && box.height >= 44);
  const court = await page.locator(".court").boundingBox();
  const [floor, movers] = [await pixels(page, 0), await pixels(page, 1)];
  await small.tap();
  const large = button(page, "Close-up: show the whole court");
  assert.deepEqual(await large.boundingBox(), court, "it has the court, and the court its size");
  assert.notEqual((await pixels(page, 0)).hash, floor.hash);
  assert.notEqual((await pixels(page, 1)).hash, movers.hash);
  await large.tap();
  assert.deepEqual(await small.boundingBox(), box);
  assert.equal((await pixels(page, 0)).hash, floor.hash);
  assert.equal((await pixels(page, 1)).hash, movers.hash);
});

test("the close-up lies where the button is", async (t) => {
  const { page } = await openHandoff(t);
  const box = await button(page, "Close-up: show large").boundingBox();
  const court = await page.locator(".court").boundingBox();
  // Paper under its frame hides the court's lines; the frame itself is a line in the soft colour.
  const rim = await page.evaluate(
    ([x, y, width, height]) => {
      const canvas = document.querySelector("backcut-set").shadowRoot.querySelectorAll("canvas")[1];
      const context = canvas.getContext("2d");
      const middles = [
        [x + width / 2, y],
        [x + width / 2, y + height],
        [x, y + height / 2],
        [x + width, y + height / 2],
      ];
      return middles.map(([a, b]) => {
        const { data } = context.getImageData(Math.round(a) - 1, Math.round(b) - 1, 2, 2);
        return data.filter((_, i) => i % 4 === 3).every((alpha) => alpha > 0);
      });
    },
    [box.x - court.x, box.y - court.y, box.width, box.height],
  );
  assert.deepEqual(rim, [true, true, true, true]);
});

test("the close-up is reached and left by keyboard, and keys still act there", async (t) => {
  const { page } = await openHandoff(t);
  await refined(page);
  await page.keyboard.press("Tab");
  assert.equal(
    await page.evaluate(() =>
      document.querySelector("backcut-set").shadowRoot.activeElement.getAttribute("aria-label"),
    ),
    "Close-up: show large",
  );
  await page.keyboard.press("Enter");
  const large = button(page, "Close-up: show the whole court");
  assert.equal(await large.isVisible(), true);
  await page.keyboard.press("ArrowRight");
  assert.equal(await property(page, "currentTime"), 3.5);
  await page.keyboard.press(" ");
  assert.equal(await button(page, "Close-up: show large").isVisible(), true);
  assert.equal(await property(page, "paused"), true);
});

test("while it is large bodies are true, and the words beside the key say so", async (t) => {
  const { page } = await openHandoff(t);
  await button(page, "More").click();
  const note = page.locator(".key .scale");
  assert.match(await note.textContent(), /Bodies × 1\.8/);
  await button(page, "Close-up: show large").click();
  assert.doesNotMatch(await note.textContent(), /Bodies/);
});

test("an audit finds nothing with the close-up small or large and all unrolled", async (t) => {
  const { page } = await openHandoff(t);
  await button(page, "More").click();
  for (const name of ["large", "the whole court"]) {
    const closeUp = button(page, `Close-up: show ${name}`);
    assert.equal(await closeUp.isVisible(), true);
    assert.deepEqual(await audit(page), []);
    await closeUp.click();
  }
});

test("a beat without a close-up shows the whole court, and the next one does too", async (t) => {
  const { page } = await open(t, { viewport: PHONE, body: TAG });
  assert.equal(await page.locator(".close-up").isVisible(), false, "nothing to look at closely");
  const loaded = event(page, "loadedmetadata");
  await page.evaluate((set) => {
    set.beats[1].actions = [
      { who: 4, do: "screen", for: 3 },
      { who: 3, do: "cut", off: 4, to: "top" },
    ];
    const script = document.createElement("script");
    script.type = "application/json";
    script.textContent = JSON.stringify(set);
    const element = document.querySelector("backcut-set");
    element.append(script);
    element.src = "";
  }, SET);
  await loaded;
  const small = button(page, "Close-up: show large");
  await button(page, "Next beat").click();
  await small.click();
  await button(page, "Next beat").click();
  assert.equal(await page.locator(".close-up").isVisible(), false);
  const whole = (await pixels(page, 0)).hash;
  await button(page, "Previous beat").click();
  assert.equal(await small.isVisible(), true);
  assert.equal((await pixels(page, 0)).hash, whole);
});

test("it stays large when the full module takes over", async (t) => {
  const { page } = await open(t, { viewport: PHONE, body: "", wait: false });
  const come = await held(page, "**/full_bg-*.wasm");
  const screen = structuredClone(SET);
  screen.beats[1].actions = [
    { who: 4, do: "screen", for: 3 },
    { who: 3, do: "cut", off: 4, to: "top" },
  ];
  browser.server.answers["/screen.json"] = {
    type: "application/json",
    body: JSON.stringify(screen),
  };
  await page.evaluate(() => {
    const set = document.createElement("backcut-set");
    set.src = "/screen.json";
    document.querySelector("main").append(set);
    return set.ready;
  });
  await button(page, "Next beat").click();
  await button(page, "Close-up: show large").click();
  const court = (await pixels(page, 0)).hash;
  come();
  await page.locator(".captions p", { hasText: /screen/ }).waitFor();
  assert.equal(await button(page, "Close-up: show the whole court").isVisible(), true);
  assert.equal((await pixels(page, 0)).hash, court);
});

test("a wide court needs no close-up", async (t) => {
  const { page } = await openHandoff(t, { viewport: { width: 820, height: 1200 } });
  assert.equal(await page.locator(".close-up").isVisible(), false);
});

// -- folding --------------------------------------------------------------------------------------

test("in a low window the key folds, the court gives way, the strip folds, the court shrinks", async (t) => {
  const { page } = await open(t, {
    body: TAG.replace("set.json", "told.json"),
    viewport: { width: 820, height: 1200 },
  });
  const seen = async (height) => {
    await page.setViewportSize({ width: 820, height });
    await drawn(page);
    const box = async (selector) => page.locator(selector).boundingBox();
    const reader = (await box(".reader")).height;
    return {
      fits: reader <= height,
      reader,
      key: await page.locator(".key").isVisible(),
      folds: await button(page, "all rows").isVisible(),
      court: (await box(".court")).width,
    };
  };
  const whole = await seen(1200);
  assert.deepEqual([whole.fits, whole.key, whole.folds], [true, true, false]);
  const keyless = await seen(Math.ceil(whole.reader) - 1);
  assert.deepEqual([keyless.fits, keyless.key, keyless.folds], [true, false, false]);
  const spared = await seen(Math.floor(keyless.reader) - 20);
  assert.deepEqual([spared.fits, spared.folds], [true, false]);
  assert.ok(spared.court < whole.court && spared.court >= 640, `${spared.court}`);
  const folded = await seen(Math.floor(keyless.reader) - 110);
  assert.deepEqual([folded.fits, folded.key, folded.folds], [true, false, true]);
  assert.ok(folded.court > 640);
  const small = await seen(Math.floor(folded.reader) - 60);
  assert.equal(small.fits, true);
  assert.ok(small.court < whole.court && small.court > 420, `${small.court}`);
  assert.equal((await seen(300)).court, 420);
  assert.deepEqual(await seen(1200), whole);
});

test("what folded for want of height comes back by hand", async (t) => {
  const { page } = await open(t, { viewport: { width: 820, height: 640 }, body: TOLD });
  const height = async () => (await page.getByRole("slider").boundingBox()).height;
  const folded = await height();
  await button(page, "all rows").click();
  assert.ok((await height()) > folded);
  await button(page, "More").click();
  assert.equal(await page.locator(".key").isVisible(), true);
  await button(page, "Less").click();
  assert.equal(await page.locator(".key").isVisible(), false);
});

test("the shrunk court stands in the middle and is painted as wide as it is", async (t) => {
  const { page } = await open(t, { viewport: { width: 820, height: 300 }, body: TOLD });
  const reader = await page.locator(".reader").boundingBox();
  const court = await page.locator(".court").boundingBox();
  assert.ok(Math.abs(court.x + court.width / 2 - (reader.x + reader.width / 2)) <= 1);
  assert.equal((await pixels(page, 1)).width, court.width);
});

test("where the screen is not to be had it fills the window, whatever width the page gives it", async (t) => {
  browser.server.answers["/slim.css"] = {
    type: "text/css",
    body: "backcut-set { max-inline-size: 650px }",
  };
  const { page } = await open(t, { head: '<link rel="stylesheet" href="/slim.css">' });
  await page.evaluate(() => {
    Element.prototype.requestFullscreen = () => Promise.reject(new Error("not allowed"));
  });
  const width = async () => (await page.locator("backcut-set").boundingBox()).width;
  assert.equal(await width(), 650);
  await button(page, "Full screen").click();
  await button(page, "Close").waitFor();
  assert.equal(await width(), 820);
  await button(page, "Close").click();
  assert.equal(await width(), 650);
});

// -- paper ----------------------------------------------------------------------------------------

test("on paper each beat is drawn in black on white, with its words", async (t) => {
  const { page } = await open(t, { colorScheme: "dark" });
  await button(page, "Captions").click();
  const screen = await pixels(page, 1);
  await refined(page);
  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  const sheet = page.locator(".sheet");
  for (const { title } of SET.beats) {
    assert.equal(await sheet.getByRole("heading", { name: title }).isVisible(), true);
  }
  assert.equal(await sheet.locator("p").count(), SET.beats.length);
  for (const part of [".court", ".strip", ".controls", ".words", ".beat"]) {
    assert.equal(await page.locator(part).isVisible(), false, part);
  }
  assert.match(await sheet.getByRole("link").textContent(), /\/set\.json$/);
  const colours = await sheet.locator("canvas").evaluateAll((canvases) =>
    canvases.map((canvas) => {
      const { width, height } = canvas;
      const { data } = canvas.getContext("2d").getImageData(0, 0, width, height);
      let coloured = 0;
      let dark = 0;
      for (let i = 0; i < data.length; i += 4) {
        if (data[i] !== data[i + 1] || data[i] !== data[i + 2]) coloured += 1;
        if (data[i + 3] === 255 && data[i] < 40) dark += 1;
      }
      return { coloured, dark: dark > 0, dense: width / parseFloat(canvas.style.width) };
    }),
  );
  // The beats, the strip, the key.
  assert.equal(colours.length, SET.beats.length + 2);
  for (const canvas of colours) assert.deepEqual(canvas, { coloured: 0, dark: true, dense: 3 });
  await page.emulateMedia({ media: "screen" });
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await drawn(page);
  assert.equal(await sheet.locator("canvas").count(), 0);
  assert.equal(await page.locator(".court").isVisible(), true);
  assert.deepEqual(await pixels(page, 1), screen, "the screen's picture was never touched");
});

test("a page that is printed has all its sets on paper, those far below too", async (t) => {
  const far = '<div class="far"></div>';
  const head = '<link rel="stylesheet" href="/far-print.css">';
  browser.server.answers["/far-print.css"] = {
    type: "text/css",
    body: ".far { height: 5000px } @media print { .far { height: auto } }",
  };
  const { page, problems } = await open(t, { head, body: TAG + far + TAG });
  await refined(page);
  await page.evaluate(() => {
    addEventListener("afterprint", () => (globalThis.printed = counted), { once: true });
    let counted = [];
    // After the sets' own listeners.
    addEventListener("beforeprint", () => {
      counted = [...document.querySelectorAll("backcut-set")].map(
        (set) => set.shadowRoot.querySelectorAll(".sheet canvas").length,
      );
    });
  });
  const pdf = await page.pdf({ format: "A4" });
  assert.ok(pdf.length > 10_000);
  const each = SET.beats.length + 2;
  assert.deepEqual(await page.evaluate(() => globalThis.printed), [each, each]);
  assert.deepEqual(problems, []);
});
