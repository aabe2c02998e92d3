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
  await button(page, "Clear").click();
  const over = event(page, "ended");
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

for (const width of [390, 820]) {
  for (const name of ["Walk-through", "Loop"]) {
    test(`an audit finds nothing in ${name}, ${width} pixels wide`, async (t) => {
      const { page, problems } = await taught(t, name, { viewport: { width, height: 900 } });
      assert.deepEqual(await audit(page), []);
      assert.deepEqual(problems, []);
    });
  }
}
