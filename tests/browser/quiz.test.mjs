// The quiz: a round by mouse and one by keyboard, what it hides, what it keeps.

import assert from "node:assert/strict";
import { test } from "node:test";
import { audit, inBrowser, pace, pixels, property, refined } from "./page.mjs";

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

/** What the question wants: a place, an instant, one that is looked for by hand, or a choice. */
async function wanted(page) {
  if (await page.locator(".slide").isVisible()) return "by hand";
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
    await pace(page, 0.1);
    await button(page, "Play").click();
    await button(page, "Now").click();
    await pace(page, 1);
  } else if (kind === "by hand") {
    await page.locator(".slide input").press("ArrowRight");
    await button(page, "Answer").click();
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
      await pace(page, 0.1);
      await page.keyboard.press("Enter");
      await button(page, "Now").waitFor();
      await page.keyboard.press(" ");
      await pace(page, 1);
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

/** Answers by mouse until something is asked that begins with `start`. */
async function until(page, start) {
  for (;;) {
    const text = await heading(page).textContent();
    if (text.startsWith(start)) return text;
    await clicked(page);
    await page.getByRole("button", { name: /^(Next question|See the sum)$/ }).click();
    await page
      .getByText(/Question \d of 5|of 500 points/)
      .first()
      .waitFor();
    const another = button(page, "Another round");
    if (await another.isVisible()) await another.click();
  }
}

/** What the element shows: its line, its length, and whether it stands. */
const line = (page) =>
  page.evaluate(() => {
    const { read, duration, paused, currentTime } = document.querySelector("backcut-set");
    return { read, duration, paused, currentTime };
  });

/** Resolves once the element says so of its line. */
const lineIs = (page, path, paused) =>
  page.waitForFunction(
    ([read, stands]) => {
      const set = document.querySelector("backcut-set");
      return set.read === read && (stands === null || set.paused === stands);
    },
    [path, paused],
  );

/** A defence, and the line that it decides in its one read. */
const SHOWN = { coverage: "top-lock", read: "3" };

test("after what now the line that is right is played from the cue, and put back after that", async (t) => {
  const { page, problems } = await begun(t, "turnstile", `coverage="${SHOWN.coverage}"`);
  await until(page, "What now?");
  const drawn = await line(page);
  assert.equal(drawn.read, "");
  await clicked(page);
  await lineIs(page, SHOWN.read, false);
  assert.ok((await property(page, "currentTime")) >= drawn.currentTime);
  await page.waitForFunction(
    () => document.querySelector("backcut-set").shadowRoot.querySelector(".told").textContent,
  );
  await lineIs(page, SHOWN.read, true);
  const shown = await line(page);
  assert.equal(shown.currentTime, shown.duration);
  assert.notEqual(shown.duration, drawn.duration);
  // Once more, from the cue.
  await button(page, "See it again").click();
  await lineIs(page, SHOWN.read, false);
  assert.ok((await property(page, "currentTime")) < shown.duration);
  const asked = await page.locator(".quiz .count").first().textContent();
  await page.getByRole("button", { name: /^(Next question|See the sum)$/ }).click();
  await lineIs(page, "", true);
  assert.equal(await page.locator("backcut-set").getAttribute("read"), null);
  await page.waitForFunction(
    (before) =>
      document.querySelector("backcut-set").shadowRoot.querySelector(".quiz .count").textContent !==
      before,
    asked,
  );
  assert.equal((await line(page)).duration, drawn.duration);
  // What is asked next is answered as ever.
  await until(page, "What now?");
  await clicked(page);
  await lineIs(page, SHOWN.read, false);
  await button(page, "End the quiz").click();
  await lineIs(page, "", true);
  assert.equal(await page.locator(".strip").isVisible(), true);
  assert.deepEqual(problems, []);
});

test("where nothing moves the right line is shown by pictures, each with its words", async (t) => {
  const { page, problems } = await begun(t, "turnstile", `coverage="${SHOWN.coverage}"`, {
    reducedMotion: "reduce",
  });
  await until(page, "What now?");
  const { currentTime: cue, duration } = await line(page);
  await clicked(page);
  await lineIs(page, SHOWN.read, true);
  const told = () => page.locator(".quiz .told").textContent();
  await page.waitForFunction((t) => document.querySelector("backcut-set").currentTime > t, cue);
  const pictures = [];
  for (;;) {
    const { currentTime, duration: end } = await line(page);
    pictures.push(currentTime);
    assert.match(await told(), /\S/);
    assert.equal(await property(page, "paused"), true);
    if (currentTime === end) break;
    await button(page, "Next picture").click();
  }
  assert.ok(pictures.length > 1 && pictures.every((t) => t > cue), pictures.join());
  assert.deepEqual(await audit(page), []);
  await page.getByRole("button", { name: /^(Next question|See the sum)$/ }).click();
  await page.waitForFunction(
    (before) => document.querySelector("backcut-set").duration === before,
    duration,
  );
  assert.equal(await property(page, "read"), "");
  assert.deepEqual(problems, []);
});

test("another defence while the right line is shown begins anew on the line that was there", async (t) => {
  const { page, problems } = await begun(t, "turnstile", `coverage="${SHOWN.coverage}"`);
  await until(page, "What now?");
  const { duration } = await line(page);
  await clicked(page);
  await lineIs(page, SHOWN.read, false);
  await page.evaluate(() => (document.querySelector("backcut-set").coverage = "chase"));
  await lineIs(page, "", true);
  await page.getByText("Question 1 of 5").waitFor();
  assert.equal(await property(page, "duration"), duration);
  await clicked(page);
  assert.match(await said(page), /^\d+ points? \S/);
  assert.deepEqual(problems, []);
});

test("who reads that nothing shall move looks for the instant by hand, and has the same points", async (t) => {
  const { page, problems } = await begun(t, "turnstile", "", { reducedMotion: "reduce" });
  const question = await until(page, "When does ");
  const slider = page.getByRole("slider", { name: question });
  assert.equal(await button(page, "Answer").isDisabled(), true);
  const from = await property(page, "currentTime");
  const before = await pixels(page, 1);
  await slider.focus();
  await page.keyboard.press("ArrowRight");
  assert.ok(Math.abs((await property(page, "currentTime")) - from - 0.1) < 1e-6);
  assert.notDeepEqual(await pixels(page, 1), before, "the picture goes along");
  assert.equal(await property(page, "paused"), true);
  assert.deepEqual(await audit(page), []);
  await page.keyboard.press("Enter");
  const early = /^(\d+) points? .*leaves at (\d+\.\d) s.*You were (\d\.\d) s early/.exec(
    await said(page),
  );
  assert.ok(early, await said(page));
  const [, points, right] = early.map(Number);
  assert.ok(points < 100);
  await button(page, "Next picture").waitFor();
  await button(page, "End the quiz").click();
  // Nothing was finished, so the same questions come again.
  await opener(page).click();
  await until(page, question);
  // Where its steps come nearest.
  await slider.focus();
  const steps = Math.round((right - from) / 0.1);
  for (let i = 0; i < steps; i += 1) await page.keyboard.press("ArrowRight");
  await button(page, "Answer").click();
  assert.match(await said(page), /^100 points .*You were on time\.$/);
  assert.deepEqual(problems, []);
});

test("who hears the picture is not told what is asked", async (t) => {
  const { page } = await begun(t, "turnstile", "");
  await until(page, "Who gets the ball?");
  const picture = page.locator(".court [role=img]");
  const told = await picture.getAttribute("aria-label");
  assert.doesNotMatch(told, /pass/);
  assert.match(told, /has the ball/);
  await clicked(page);
  assert.match(await said(page), /passes/);
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
