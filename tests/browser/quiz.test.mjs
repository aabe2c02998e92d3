// The quiz: a round by mouse and one by keyboard, what it hides, what it keeps.

import assert from "node:assert/strict";
import { test } from "node:test";
import { audit, inBrowser, pixels, property, refined } from "./page.mjs";

const demo = (name, attributes = "") =>
  `<backcut-set src="/web-demo/sets/${name}.json" ${attributes}></backcut-set>`;

const { open } = inBrowser();

const opener = (page) => page.getByRole("button", { name: "Quiz", exact: true });
const button = (page, name) => page.getByRole("button", { name, exact: true });
const heading = (page) => page.locator(".quiz h3");
const said = (page) => page.locator(".quiz .reason").textContent();

/** Opens the quiz of a set. */
async function begun(t, name = "turnstile", attributes = 'coverage="chase"', options = {}) {
  const opened = await open(t, { body: demo(name, attributes), ...options });
  await refined(opened.page);
  await opener(opened.page).click();
  await heading(opened.page).waitFor();
  return opened;
}

/** What the question wants: a place, an instant or a choice. */
async function wanted(page) {
  if ((await page.getByRole("application").count()) > 0) return "place";
  return (await button(page, "Play").isVisible()) ? "instant" : "choice";
}

/** Where a player is at the instant that is shown, by the element's own numbers. */
const place = (page, who) =>
  page.evaluate((n) => {
    const { frame } = document.querySelector("backcut-set");
    const at = 5 + 5 * (n - 1);
    return { x: frame[at + 1], y: frame[at + 2] };
  }, who);

/** Answers by mouse: somewhere, some time, the first choice. */
async function clicked(page) {
  const kind = await wanted(page);
  if (kind === "place") {
    const box = await page.getByRole("application").boundingBox();
    await page.mouse.click(box.x + 0.6 * box.width, box.y + 0.4 * box.height);
  } else if (kind === "instant") {
    await button(page, "Play").click();
    await button(page, "Now").click();
  } else {
    await page.getByRole("radio").first().check();
    await button(page, "Answer").click();
  }
  return kind;
}

/** Plays a round by mouse; the points of each question, as they are told. */
async function round(page) {
  const points = [];
  for (let i = 0; i < 5; i += 1) {
    await page.getByText(`Question ${i + 1} of 5`).waitFor();
    await clicked(page);
    points.push(Number(/^(\d+) points? /.exec(await said(page))?.[1]));
    await page.getByRole("button", { name: i < 4 ? "Next question" : "See the sum" }).click();
  }
  return points;
}

test("a round by mouse is scored, summed and kept over a reload until it is forgotten", async (t) => {
  const { page, problems } = await begun(t);
  const points = await round(page);
  assert.ok(
    points.every((p) => p >= 0 && p <= 100),
    points.join(),
  );
  const sum = points.reduce((a, b) => a + b, 0);
  await heading(page).getByText(`${sum} of 500 points`).waitFor();
  assert.match(await said(page), /best of this set so far\. Kept on this device only/);
  await page.reload();
  await refined(page);
  await opener(page).click();
  await page.getByText(`0 points, best ${sum}`).waitFor();
  // The next round asks other questions, or in another order.
  await round(page);
  await button(page, "Forget my results").click();
  await heading(page).getByText("Forgotten.").waitFor();
  assert.equal(await page.evaluate(() => localStorage.length), 0);
  await button(page, "Another round").click();
  await page.getByText("0 points", { exact: true }).waitFor();
  assert.deepEqual(problems, []);
});

test("a round by keyboard: a cross that is told, a press, a choice", async (t) => {
  const { page, problems } = await open(t, { body: demo("turnstile", 'coverage="chase"') });
  await refined(page);
  await opener(page).focus();
  await page.keyboard.press("Enter");
  await heading(page).waitFor();
  const kinds = new Set();
  for (let i = 0; i < 5; i += 1) {
    await page.getByText(`Question ${i + 1} of 5`).waitFor();
    const kind = await wanted(page);
    kinds.add(kind);
    if (kind === "place") {
      const question = await heading(page).textContent();
      await page.getByRole("application", { name: question }).and(page.locator(":focus")).waitFor();
      await page.keyboard.press("ArrowRight");
      await page.keyboard.press("ArrowRight");
      await page.keyboard.press("Shift+ArrowUp");
      await page.getByText("0.5 m to the right of the ring, 3.0 m out").waitFor();
      await page.keyboard.press("Enter");
    } else if (kind === "instant") {
      await page.keyboard.press("Enter");
      await button(page, "Now").waitFor();
      await page.keyboard.press(" ");
    } else {
      await page.keyboard.press("Tab");
      await page.keyboard.press(" ");
      await page.keyboard.press("ArrowDown");
      assert.ok(await page.getByRole("radio").nth(1).isChecked());
      await page.keyboard.press("Enter");
    }
    assert.match(await said(page), /^\d+ points? \S/, kind);
    // The focus waits on what goes on.
    await page.keyboard.press("Enter");
  }
  await heading(page).getByText("of 500 points").waitFor();
  assert.deepEqual([...kinds].sort(), ["choice", "instant", "place"]);
  assert.deepEqual(problems, []);
});

test("who points where the player goes has all points, and the court shows both", async (t) => {
  const { page } = await begun(t, "lighthouse", "");
  // Until a way is asked for; the answer shows how it ends.
  let who;
  for (;;) {
    await page.getByText(/Question \d of 5/).waitFor();
    who = /Where does (\d) go/.exec(await heading(page).textContent())?.[1];
    await clicked(page);
    if (who) break;
    await button(page, "Next question").click();
  }
  const text = await heading(page).textContent();
  await page.waitForFunction(() => document.querySelector("backcut-set").paused);
  const right = await place(page, Number(who));
  await button(page, "End the quiz").click();
  // Nothing was finished, so the same questions come again.
  await opener(page).click();
  await page.getByText("Question 1 of 5").waitFor();
  while ((await heading(page).textContent()) !== text) {
    await clicked(page);
    await button(page, "Next question").click();
  }
  const asked = await pixels(page, 1);
  const px = await page.evaluate(({ x, y }) => {
    const court = document.querySelector("backcut-set").shadowRoot.querySelector(".aim");
    // FIBA's court and apron of 0.4 m, as wide as the picture; the end line 1.575 m behind the ring.
    const scale = court.clientWidth / 15.8;
    const box = court.getBoundingClientRect();
    return { x: box.x + (x + 7.9) * scale, y: box.y + (y + 1.975) * scale };
  }, right);
  await page.mouse.click(px.x, px.y);
  assert.match(await said(page), /^100 points .*You had it\.$/);
  assert.notDeepEqual(await pixels(page, 1), asked);
});

test("what would tell the answer is out of reach while a question stands", async (t) => {
  const { page } = await begun(t);
  for (const gone of [".strip", ".captions", ".controls", ".judged", ".close-up", ".words"]) {
    assert.equal(await page.locator(gone).first().isVisible(), false, gone);
  }
  const before = await property(page, "currentTime");
  for (const key of ["End", "ArrowRight", "k", ".", "PageDown", "3"])
    await page.keyboard.press(key);
  assert.equal(await property(page, "currentTime"), before);
  assert.equal(await property(page, "paused"), true);
  const hidden = await pixels(page, 1);
  await button(page, "End the quiz").click();
  assert.equal(await page.locator(".strip").isVisible(), true);
  assert.notDeepEqual(await pixels(page, 1), hidden, "all is drawn again");
  await opener(page).and(page.locator(":focus")).waitFor();
  await page.keyboard.press("End");
  assert.equal(await property(page, "ended"), true);
});

test("who reads that nothing shall move is asked for no instant", async (t) => {
  const { page } = await begun(t, "turnstile", "", { reducedMotion: "reduce" });
  for (let i = 0; i < 5; i += 1) {
    await page.getByText(`Question ${i + 1} of 5`).waitFor();
    assert.notEqual(await clicked(page), "instant");
    assert.equal(await property(page, "paused"), true);
    await page.getByRole("button", { name: i < 4 ? "Next question" : "See the sum" }).click();
  }
  await heading(page).getByText("of 500 points").waitFor();
});

test("where the page may keep nothing it says so", async (t) => {
  const { page, problems } = await begun(t, "turnstile", "");
  await page.addInitScript(() =>
    Object.defineProperty(globalThis, "localStorage", {
      get() {
        throw new DOMException("shut", "SecurityError");
      },
    }),
  );
  await page.reload();
  await refined(page);
  await opener(page).click();
  await round(page);
  assert.match(await said(page), /may not keep results/);
  assert.equal(await button(page, "Forget my results").isVisible(), false);
  assert.deepEqual(problems, []);
});

test("another set begins anew, and another defence too", async (t) => {
  const { page, problems } = await begun(t, "turnstile", "");
  const asked = await heading(page).textContent();
  await page.evaluate(() => (document.querySelector("backcut-set").coverage = "switch"));
  await page.waitForFunction(
    (text) =>
      document.querySelector("backcut-set").shadowRoot.querySelector(".quiz h3").textContent !==
      text,
    asked,
  );
  await page.evaluate(
    () => (document.querySelector("backcut-set").src = "/web-demo/sets/gangway.json"),
  );
  await page.getByRole("heading", { name: "Gangway" }).waitFor();
  await page.getByText("Question 1 of 5").waitFor();
  await clicked(page);
  assert.match(await said(page), /^\d+ points? \S/);
  assert.deepEqual(problems, []);
});

for (const [width, colorScheme] of [
  [820, "light"],
  [390, "dark"],
]) {
  test(`${width} wide, ${colorScheme}: an audit finds nothing`, async (t) => {
    const { page } = await open(t, {
      body: demo("turnstile", 'coverage="chase"'),
      colorScheme,
      viewport: { width, height: 844 },
    });
    await refined(page);
    if (width < 600) await button(page, "More").click();
    await opener(page).click();
    for (let i = 0; i < 5; i += 1) {
      await page.getByText(`Question ${i + 1} of 5`).waitFor();
      assert.deepEqual(await audit(page), []);
      await clicked(page);
      assert.deepEqual(await audit(page), []);
      await page.getByRole("button", { name: i < 4 ? "Next question" : "See the sum" }).click();
    }
    assert.deepEqual(await audit(page), []);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth);
    assert.ok(wide, "nothing stands over the edge");
  });
}
