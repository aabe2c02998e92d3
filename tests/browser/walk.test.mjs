// A walk through a set that stops and says why, a stretch over and over, stretches shown slowly.

import assert from "node:assert/strict";
import { test } from "node:test";
import { audit, event, inBrowser, pixels, property, refined } from "./page.mjs";

const BODY = '<backcut-set src="/web-demo/sets/turnstile.json"></backcut-set>';

const { open } = inBrowser();

/** A page with the mode on that this button opens. */
async function taught(t, name, options = {}) {
  const opened = await open(t, { body: BODY, ...options });
  const { page } = opened;
  await refined(page);
  if ((page.viewportSize()?.width ?? 0) < 600) {
    await page.getByRole("button", { name: "More" }).click();
  }
  const opener = page.getByRole("button", { name, exact: true }).filter({ visible: true });
  await opener.click();
  await page.getByRole("group", { name, exact: true }).waitFor();
  await page.evaluate(() => (document.querySelector("backcut-set").playbackRate = 4));
  return { ...opened, opener };
}

const why = (page) => page.locator(".walk .why");
const button = (page, name) => page.getByRole("button", { name, exact: true });

/** Resolves once it stands at the stop whose reasons begin so. */
const stands = (page, begins) =>
  page.waitForFunction((text) => {
    const set = document.querySelector("backcut-set");
    const said = set.shadowRoot.querySelector(".walk .why").textContent;
    return set.paused && said.startsWith(text);
  }, begins);

test("it plays to each stop, stands there and says why", async (t) => {
  const { page, problems } = await taught(t, "Walk-through");
  await stands(page, "Beat 1: Zipper.");
  const told = [];
  for (const begins of ["Beat 2", "4 and 5 go", "3 times", "Beat 3"]) {
    await button(page, "Go on").click();
    await stands(page, begins);
    told.push(await page.locator(".walk .count").textContent());
  }
  assert.deepEqual(told, ["2 of 5", "3 of 5", "4 of 5", "5 of 5"]);
  await button(page, "Go on").click();
  await stands(page, "That was all of it.");
  assert.equal(await property(page, "ended"), true);
  await page.locator(".walk").getByRole("button", { name: "Again" }).click();
  await stands(page, "Beat 1");
  assert.deepEqual(problems, []);
});

test("ghosts show what is next, and are gone when it is left", async (t) => {
  const { page } = await taught(t, "Walk-through");
  await button(page, "Go on").click();
  await stands(page, "Beat 2");
  const haunted = await pixels(page, 1);
  await button(page, "Leave").click();
  const alone = await pixels(page, 1);
  assert.notEqual(haunted.hash, alone.hash);
  await page.evaluate(() => (document.querySelector("backcut-set").currentTime += 0));
  assert.deepEqual(await pixels(page, 1), alone);
});

test("space, Enter and a tap on the court go on, Escape leaves", async (t) => {
  const { page, opener } = await taught(t, "Walk-through");
  // The strip has no use of its own for these keys.
  await page.getByRole("slider", { name: "Time" }).focus();
  await page.keyboard.press("Space");
  await stands(page, "Beat 2");
  await page.keyboard.press("Enter");
  await stands(page, "4 and 5");
  await page.locator(".court").click({ position: { x: 20, y: 300 } });
  await stands(page, "3 times");
  await page.keyboard.press("Escape");
  await page.locator(".walk").waitFor({ state: "hidden" });
  assert.equal(await opener.getAttribute("aria-pressed"), "false");
  assert.ok(await opener.evaluate((node) => node === node.getRootNode().activeElement));
  // Play is play again.
  const playing = event(page, "ended");
  await page.keyboard.press("k");
  await playing;
});

test("who goes on while it moves is there at once, and Back is the stop before", async (t) => {
  const { page } = await taught(t, "Walk-through");
  await page.evaluate(() => (document.querySelector("backcut-set").playbackRate = 0.01));
  await button(page, "Go on").click();
  await page.waitForFunction(() => !document.querySelector("backcut-set").paused);
  assert.equal(await why(page).textContent(), "");
  await button(page, "Go on").click();
  await stands(page, "Beat 2");
  await button(page, "Back").click();
  await stands(page, "Beat 1");
  assert.ok(await button(page, "Back").isDisabled());
});

test("whoever asks for less motion is shown stop by stop", async (t) => {
  const { page } = await taught(t, "Walk-through", { reducedMotion: "reduce" });
  await page.evaluate(() => {
    const set = document.querySelector("backcut-set");
    globalThis.played = 0;
    set.addEventListener("play", () => (globalThis.played += 1));
    set.currentTime = 0;
  });
  await stands(page, "Beat 1");
  await button(page, "Go on").click();
  await stands(page, "Beat 2");
  assert.equal(await page.evaluate(() => globalThis.played), 0);
});

test("it begins where the reader is, and follows who goes elsewhere by the strip", async (t) => {
  const { page } = await taught(t, "Walk-through");
  await page.evaluate(() => (document.querySelector("backcut-set").currentTime = 5));
  await page.waitForFunction(
    () =>
      document.querySelector("backcut-set").shadowRoot.querySelector(".count").textContent !== "",
  );
  await button(page, "Back").click();
  await stands(page, "3 times");
});

test("a stretch is played over and over until it is cleared", async (t) => {
  const { page, problems } = await taught(t, "Loop");
  const ends = await page
    .getByRole("slider", { name: /of the loop/ })
    .evaluateAll((all) => all.map((end) => Number(end.getAttribute("aria-valuenow"))));
  assert.deepEqual(ends, [0, 2.9]);
  const round = page.evaluate(
    () =>
      new Promise((resolve) => {
        const set = document.querySelector("backcut-set");
        let last = 0;
        set.addEventListener("timeupdate", () => {
          if (set.currentTime < last) resolve(last);
          last = set.currentTime;
        });
        set.play();
      }),
  );
  assert.ok((await round) < 4);
  const over = event(page, "ended");
  await button(page, "Clear").click();
  await over;
  assert.deepEqual(problems, []);
});

test("both ends of a stretch are set from where the reader is, by handle and by key", async (t) => {
  const { page } = await taught(t, "Loop");
  const ends = () =>
    page
      .getByRole("slider", { name: /of the loop/ })
      .evaluateAll((all) => all.map((end) => end.getAttribute("aria-valuenow")));
  const at = (time) =>
    page.evaluate((to) => (document.querySelector("backcut-set").currentTime = to), time);
  await at(4);
  await button(page, "End here").click();
  await at(1);
  await button(page, "Start here").click();
  assert.deepEqual(await ends(), ["1.0", "4.0"]);
  await page.getByRole("slider", { name: "Start of the loop" }).press("ArrowRight");
  await page.getByRole("slider", { name: "End of the loop" }).press("ArrowLeft");
  assert.deepEqual(await ends(), ["1.1", "3.9"]);
  await at(2);
  await page.getByRole("slider", { name: "Time", exact: true }).press("s");
  await at(6);
  await page.getByRole("slider", { name: "Time", exact: true }).press("e");
  assert.deepEqual(await ends(), ["2.0", "6.0"]);
  const handle = await page.getByRole("slider", { name: "End of the loop" }).boundingBox();
  await page.mouse.move(handle.x + handle.width / 2, handle.y + handle.height / 2);
  await page.mouse.down();
  await page.mouse.move(handle.x + handle.width / 2 + 60, handle.y + 4, { steps: 3 });
  await page.mouse.up();
  assert.ok(Number((await ends())[1]) > 6.3);
});

test("a set with slow stretches goes on with the full module and can be shown at one speed", async (t) => {
  const { page } = await taught(t, "Walk-through");
  const slow = button(page, "Slow stretches");
  assert.equal(await slow.getAttribute("aria-pressed"), "true");
  await slow.click();
  assert.equal(await slow.getAttribute("aria-pressed"), "false");
});

test("slow stretches are turned off and on whatever is on", async (t) => {
  const { page } = await open(t, { body: BODY });
  await refined(page);
  const slow = button(page, "Slow stretches");
  await slow.waitFor();
  /** Seconds of the set that go by in a second of the reader's clock, inside the slow stretch. */
  const pace = () =>
    page.evaluate(async () => {
      const set = document.querySelector("backcut-set");
      const frame = () => new Promise((done) => requestAnimationFrame(done));
      let [clock, passed, frames] = [0, 0, 0];
      while (frames < 12) {
        set.currentTime = 5;
        set.play();
        let [then, was] = [await frame(), set.currentTime];
        while (set.currentTime < 6 && frames < 12) {
          const [now, is] = [await frame(), set.currentTime];
          // The reader's clock takes no longer step than a tenth, however late a frame is.
          if (now - then < 99) {
            clock += now - then;
            passed += is - was;
            frames += 1;
          }
          [then, was] = [now, is];
        }
        set.pause();
      }
      return (passed * 1000) / clock;
    });
  assert.ok((await pace()) < 0.75);
  await slow.click();
  assert.equal(await slow.getAttribute("aria-pressed"), "false");
  assert.ok((await pace()) > 0.75);
});

test("where nothing moves by itself a loop is stepped round", async (t) => {
  const { page, problems } = await open(t, { body: BODY, reducedMotion: "reduce" });
  await refined(page);
  await button(page, "Loop").click();
  await page.locator(".loop").waitFor();
  const seek = (time) =>
    page.evaluate((at) => (document.querySelector("backcut-set").currentTime = at), time);
  await seek(4);
  await button(page, "Start here").click();
  await seek(5.2);
  await button(page, "End here").click();
  await page
    .locator(".loop .why", { hasText: "Steps go round from 4.0 to 5.2 seconds." })
    .waitFor();
  await seek(4);
  const times = [];
  for (let i = 0; i < 4; i += 1) {
    await button(page, "Half a second on").click();
    times.push(Number((await property(page, "currentTime")).toFixed(2)));
  }
  assert.deepEqual(times, [4.5, 5, 5.2, 4]);
  assert.deepEqual(await audit(page), []);
  assert.deepEqual(problems, []);
});

test("the list of keys has those of the modes", async (t) => {
  const { page } = await open(t, { body: BODY });
  await refined(page);
  await button(page, "Keys").click();
  const dialog = page.getByRole("dialog");
  await dialog.waitFor();
  assert.deepEqual(await dialog.locator("h4").allInnerTexts(), ["Walk-through", "Loop", "Quiz"]);
  const rows = await dialog.locator("dl > div").allInnerTexts();
  const listed = rows.map((row) => row.replace(/\s+/g, " ").trim());
  for (const row of ["S Start here", "E End here", "Enter Go on"]) {
    assert.ok(listed.includes(row), `${row} is not in ${listed.join("; ")}`);
  }
  assert.deepEqual(await audit(page), []);
});

test("a mode that is asked for again while it is on its way begins once", async (t) => {
  const { page, problems } = await open(t, { body: BODY });
  await refined(page);
  let release;
  const held = new Promise((done) => (release = done));
  await page.route("**/teaching-*.js*", async (route) => {
    await held;
    await route.continue();
  });
  const opener = button(page, "Walk-through");
  for (let i = 0; i < 3; i += 1) await opener.click();
  release();
  await page.locator(".walk").waitFor();
  await page.getByRole("slider", { name: "Time" }).focus();
  await page.keyboard.press("Escape");
  await page.locator(".walk").waitFor({ state: "hidden" });
  // Play is the reader's own again: it goes on to the end and not to the next stop.
  const stood = page.evaluate(
    () =>
      new Promise((done) => {
        const set = document.querySelector("backcut-set");
        set.playbackRate = 8;
        for (const name of ["pause", "ended"])
          set.addEventListener(name, () => done(set.ended), { once: true });
      }),
  );
  await page.keyboard.press("k");
  assert.equal(await stood, true);
  assert.deepEqual(problems, []);
});

for (const width of [390, 820]) {
  for (const name of ["Walk-through", "Loop"]) {
    test(`an audit finds nothing in ${name}, ${width} pixels wide`, async (t) => {
      const { page, problems } = await taught(t, name, { viewport: { width, height: 900 } });
      assert.deepEqual(await audit(page), []);
      assert.deepEqual(problems, []);
    });
  }
}
