// Mouse, finger, keyboard and assistive technology.

import assert from "node:assert/strict";
import { test } from "node:test";
import { TAG, TOLD, audit, drawn, held, inBrowser, pace, property, refined } from "./page.mjs";

const browser = inBrowser();
const { open } = browser;

test("dragging in the strip scrubs, and the slider says where", async (t) => {
  const { page } = await open(t);
  const box = await page.getByRole("slider").boundingBox();
  const at = (share) => box.x + 30 + share * (box.width - 31);
  await page.mouse.move(at(0.25), box.y + 80);
  await page.mouse.down();
  const duration = await property(page, "duration");
  assert.ok(Math.abs((await property(page, "currentTime")) / duration - 0.25) < 0.01);
  await page.mouse.move(at(0.5), box.y + 80, { steps: 4 });
  await page.mouse.move(at(0.75), box.y + 300, { steps: 4 });
  await page.mouse.up();
  const time = await property(page, "currentTime");
  assert.ok(Math.abs(time / duration - 0.75) < 0.01, `${time}`);
  await drawn(page);
  const text = await page.getByRole("slider").getAttribute("aria-valuetext");
  assert.match(
    text,
    new RegExp(`^${time.toFixed(1)} seconds of ${duration.toFixed(1)}, beat \\d: .+`),
  );
});

test("scrubbing while it plays goes on playing from there", async (t) => {
  const { page } = await open(t);
  await pace(page, 0.1);
  await page.getByRole("button", { name: "Play", exact: true }).click();
  const box = await page.getByRole("slider").boundingBox();
  await page.mouse.move(box.x + box.width / 2, box.y + 60);
  await page.mouse.down();
  const held = await property(page, "currentTime");
  assert.equal(await property(page, "currentTime"), held);
  await page.mouse.up();
  assert.equal(await property(page, "paused"), false);
});

test("keys act with the focus inside, and only then", async (t) => {
  const { page } = await open(t);
  await refined(page);
  await page.keyboard.press(".");
  assert.equal(await property(page, "currentTime"), 0);
  await page.getByRole("slider").focus();
  const time = () => property(page, "currentTime");
  await page.keyboard.press("ArrowRight");
  assert.equal(await time(), 1);
  await page.keyboard.press("ArrowLeft");
  assert.equal(await time(), 0);
  await page.keyboard.press(".");
  assert.ok(Math.abs((await time()) - 1 / 30) < 1e-9);
  await page.keyboard.press(",");
  assert.ok(Math.abs(await time()) < 1e-9);
  await page.keyboard.press("End");
  assert.equal(await time(), await property(page, "duration"));
  await page.keyboard.press("Home");
  assert.equal(await time(), 0);
  await page.keyboard.press("PageUp");
  assert.ok((await time()) > 0);
  await page.keyboard.press("3");
  assert.equal(await page.locator("[aria-label='Follow 3']").getAttribute("aria-pressed"), "true");
  await page.keyboard.press("0");
  assert.equal(await page.locator("[aria-label='Follow 3']").getAttribute("aria-pressed"), "false");
  await page.keyboard.press(" ");
  assert.equal(await property(page, "paused"), false);
});

test("up and down move the time in the strip, and leave the page alone elsewhere", async (t) => {
  const { page } = await open(t);
  await refined(page);
  await page.getByRole("slider").focus();
  await page.keyboard.press("ArrowUp");
  assert.equal(await property(page, "currentTime"), 1);
  await page.keyboard.press("ArrowDown");
  assert.equal(await property(page, "currentTime"), 0);
  await page.getByRole("button", { name: "Next frame" }).focus();
  await page.keyboard.press("ArrowUp");
  assert.equal(await property(page, "currentTime"), 0);
});

test("letters and marks act: play, captions, speed", async (t) => {
  const { page } = await open(t);
  await refined(page);
  await page.getByRole("slider").focus();
  await page.keyboard.press("<");
  assert.equal(await property(page, "playbackRate"), 0.5);
  await page.keyboard.press("<");
  await page.keyboard.press("<");
  assert.equal(await property(page, "playbackRate"), 0.25);
  await page.keyboard.press(">");
  assert.equal(await property(page, "playbackRate"), 0.5);
  await page.keyboard.press("c");
  assert.equal(await page.locator(".captions").isVisible(), false);
  await page.keyboard.press("K");
  assert.equal(await property(page, "paused"), false);
});

test("a key that is pressed before what it does has come waits for that", async (t) => {
  const { page } = await open(t, { body: "", wait: false });
  const come = await held(page, "**/late-*.js");
  await page.evaluate(() => {
    const set = document.createElement("backcut-set");
    set.src = "/told.json";
    document.querySelector("main").append(set);
    return set.ready;
  });
  await page.getByRole("slider").focus();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Alt+ArrowRight");
  await page.keyboard.press(".");
  assert.equal(await property(page, "currentTime"), 0);
  come();
  await page.waitForFunction(() => document.querySelector("backcut-set").currentTime > 1);
  assert.ok(Math.abs((await property(page, "currentTime")) - 31 / 30) < 1e-9);
});

test("what is typed into a field inside stays there", async (t) => {
  let come = () => {};
  browser.server.answers["/late.json"] = {
    type: "application/json",
    body: JSON.stringify(TOLD),
    delay: new Promise((resolve) => (come = resolve)),
  };
  const field = '<p><input aria-label="Name"></p>';
  const body = `<backcut-set src="/late.json">${field}</backcut-set>`;
  const { page } = await open(t, { body, wait: false });
  const name = page.getByRole("textbox", { name: "Name" });
  await name.focus();
  await page.keyboard.type("fk 1,.c?");
  assert.equal(await name.inputValue(), "fk 1,.c?");
  come();
  await page.evaluate(() => document.querySelector("backcut-set").ready);
  await page.getByRole("slider").focus();
  await refined(page);
  assert.equal(await property(page, "paused"), true);
});

test("the keys are listed under ?, escape closes the list, the focus goes back", async (t) => {
  const { page } = await open(t, { body: TAG });
  await refined(page);
  const slider = page.getByRole("slider");
  await slider.focus();
  await page.keyboard.press("?");
  const list = page.getByRole("dialog", { name: "Keys" });
  await list.waitFor();
  for (const words of ["Play or pause", "1 second back", "Next beat", "Faster", "Full screen"]) {
    assert.equal(await list.getByText(words, { exact: true }).isVisible(), true, words);
  }
  assert.deepEqual(await audit(page), []);
  // They are listed, and do not act meanwhile.
  await page.keyboard.press("ArrowRight");
  assert.equal(await property(page, "currentTime"), 0);
  await page.keyboard.press("Escape");
  assert.equal(await list.isVisible(), false);
  await page.keyboard.press("ArrowRight");
  assert.equal(await property(page, "currentTime"), 1);
  const opener = page.getByRole("button", { name: "Keys" });
  await opener.click();
  await list.getByRole("button", { name: "Close" }).click();
  assert.equal(await list.isVisible(), false);
  const focused = () => document.querySelector("backcut-set").shadowRoot.activeElement.textContent;
  assert.equal(await page.evaluate(focused), "Keys");
});

test("letters, digits and marks can be switched off, by the page and by the reader", async (t) => {
  const { page } = await open(t, {
    body: TAG.replace("set.json", "told.json").replace(" src", ' keys="no-characters" src'),
  });
  await refined(page);
  const slider = page.getByRole("slider");
  await slider.focus();
  for (const key of ["f", "k", "c", "3", ",", ".", "<", "?"]) await page.keyboard.press(key);
  assert.equal(await property(page, "currentTime"), 0);
  assert.equal(await property(page, "paused"), true);
  assert.equal(await property(page, "playbackRate"), 1);
  assert.equal(await page.getByRole("dialog").isVisible(), false);
  assert.equal(await page.locator(".captions").isVisible(), true);
  await page.keyboard.press("ArrowRight");
  assert.equal(await property(page, "currentTime"), 1);
  await page.getByRole("button", { name: "Keys" }).click();
  const list = page.getByRole("dialog");
  assert.equal(await list.getByText("Faster").count(), 0);
  await list.getByRole("checkbox").check();
  assert.equal(await list.getByText("Faster").count(), 1);
  await page.keyboard.press("Escape");
  await slider.focus();
  await page.keyboard.press(".");
  assert.ok((await property(page, "currentTime")) > 1);
  assert.equal(await page.locator("backcut-set").getAttribute("keys"), null);
});

test("while it plays nothing is read out, and the slider knows the time when it is reached", async (t) => {
  const { page } = await open(t, { body: TAG.replace("set.json", "told.json") });
  await refined(page);
  const told = await page.evaluate(async () => {
    const set = document.querySelector("backcut-set");
    await set.play();
    // What a start says comes at once.
    await new Promise((resolve) => setTimeout(resolve));
    const said = [];
    const watching = new MutationObserver((records) => {
      for (const { target, attributeName } of records) {
        const live = (target.parentElement ?? target).closest("[role=status], [role=alert]");
        if (live || attributeName) said.push(attributeName ?? target.textContent);
      }
    });
    watching.observe(set.shadowRoot, {
      subtree: true,
      childList: true,
      characterData: true,
      attributeFilter: ["aria-valuenow", "aria-valuetext", "aria-label"],
    });
    const passed = (t) =>
      new Promise((resolve) => {
        set.addEventListener("timeupdate", function look() {
          if (set.currentTime < t) return;
          set.removeEventListener("timeupdate", look);
          resolve();
        });
      });
    await passed(0.9);
    const quiet = said.filter((name) => name !== "aria-label");
    set.shadowRoot.querySelector("[role=slider]").focus();
    const text = set.shadowRoot.querySelector("[role=slider]").getAttribute("aria-valuetext");
    return { quiet, text: parseFloat(text), time: set.currentTime };
  });
  assert.deepEqual(told.quiet, []);
  assert.ok(Math.abs(told.text - told.time) < 0.06, `${told.text} ${told.time}`);
});

test("space on a button presses that button and nothing else", async (t) => {
  const { page } = await open(t);
  await refined(page);
  await page.getByRole("button", { name: "Half", exact: true }).focus();
  await page.keyboard.press(" ");
  assert.equal(await property(page, "playbackRate"), 0.5);
  assert.equal(await property(page, "paused"), true);
});

test("a page may leave out the controls by a style, and keys and methods still act", async (t) => {
  const head = "<style>backcut-set::part(controls) { display: none }</style>";
  const policy =
    "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self' 'unsafe-inline'";
  const { page } = await open(t, { head, policy });
  await refined(page);
  assert.equal(await page.getByRole("button", { name: "Play", exact: true }).count(), 0);
  assert.ok((await page.locator("backcut-set canvas").first().boundingBox()).height > 300);
  await page.getByRole("slider").focus();
  await page.keyboard.press(" ");
  assert.equal(await property(page, "paused"), false);
  await page.evaluate(() => document.querySelector("backcut-set").pause());
  assert.equal(await property(page, "paused"), true);
});

test("keys with a modifier are the browser's", async (t) => {
  const { page } = await open(t);
  await refined(page);
  await page.getByRole("slider").focus();
  await page.keyboard.press("Alt+ArrowRight");
  assert.equal(await property(page, "currentTime"), 0);
});

test("a finger that goes down the strip scrolls the page, one that goes along it scrubs", async (t) => {
  const { page } = await open(t, {
    viewport: { width: 390, height: 500 },
    hasTouch: true,
    isMobile: true,
  });
  const client = await page.context().newCDPSession(page);
  const swipe = async (from, to) => {
    const touch = (type, touchPoints) =>
      client.send("Input.dispatchTouchEvent", { type, touchPoints });
    await touch("touchStart", [from]);
    for (let i = 1; i <= 10; i += 1) {
      const at = (axis) => from[axis] + ((to[axis] - from[axis]) * i) / 10;
      await touch("touchMove", [{ x: at("x"), y: at("y") }]);
    }
    await touch("touchEnd", []);
  };
  const slider = page.getByRole("slider");
  await slider.scrollIntoViewIfNeeded();
  const scrolled = () => page.evaluate(() => scrollY);
  let box = await slider.boundingBox();
  const y = box.y + box.height / 2;
  const along = { x: box.x + box.width * 0.8, y };
  await swipe({ x: box.x + 60, y }, along);
  const scrubbed = await property(page, "currentTime");
  assert.ok(scrubbed > 1, `${scrubbed}`);
  const before = await scrolled();
  box = await slider.boundingBox();
  const middle = { x: box.x + 100, y: box.y + box.height / 2 };
  await swipe(middle, { x: middle.x, y: middle.y - 120 });
  await page.waitForFunction((top) => scrollY > top, before);
  assert.equal(await property(page, "currentTime"), scrubbed);
});

test("on a phone the rows fold, the lists choose, more unrolls the key", async (t) => {
  const { page } = await open(t, { viewport: { width: 390, height: 844 } });
  const height = async () => (await page.getByRole("slider").boundingBox()).height;
  const folded = await height();
  await page.getByRole("button", { name: "all rows" }).click();
  assert.ok((await height()) > folded);
  await page.getByRole("combobox", { name: "Speed" }).selectOption("Half speed");
  assert.equal(await property(page, "playbackRate"), 0.5);
  await page.getByRole("combobox", { name: "Follow" }).selectOption("Follow 2");
  const key = page.locator(".key");
  assert.equal(await key.isVisible(), false);
  await page.getByRole("button", { name: "More" }).click();
  assert.equal(await key.isVisible(), true);
});

test("on a phone the list of speeds has the one that the page sets", async (t) => {
  const { page } = await open(t, { viewport: { width: 390, height: 844 } });
  const list = page.getByRole("combobox", { name: "Speed" });
  await list.waitFor();
  const told = (rate) =>
    page.evaluate(
      (r) =>
        new Promise((done) => {
          const set = document.querySelector("backcut-set");
          const [select] = set.shadowRoot.querySelectorAll("select[aria-label=Speed]");
          const look = () => {
            const { text = "", value = "" } = select.selectedOptions[0] ?? {};
            if (Number(value) === r) done([text, select.options.length]);
            else requestAnimationFrame(look);
          };
          set.playbackRate = r;
          look();
        }),
      rate,
    );
  assert.deepEqual(await told(0.75), ["Speed × 0.75", 4]);
  assert.deepEqual(await told(2), ["Speed × 2.00", 4]);
  assert.deepEqual(await told(1), ["Game speed", 4]);
});

for (const [width, colorScheme] of [
  [820, "light"],
  [820, "dark"],
  [390, "light"],
]) {
  test(`an audit finds nothing at ${width} px, ${colorScheme}`, async (t) => {
    const { page } = await open(t, { viewport: { width, height: 900 }, colorScheme, body: TAG });
    assert.deepEqual(await audit(page), []);
  });
}

test("every button is at least 24 px wide and high, 44 on a phone", async (t) => {
  const { page } = await open(t, { viewport: { width: 390, height: 844 } });
  for (const button of await page
    .locator(".controls button:visible, .controls select:visible")
    .all()) {
    const box = await button.boundingBox();
    assert.ok(
      box.width >= 44 && box.height >= 44,
      `${await button.textContent()}: ${box.width} × ${box.height}`,
    );
  }
});
