// Role cards beside the court: whose they are, the step that is on, and paper.

import assert from "node:assert/strict";
import { test } from "node:test";
import { audit, inBrowser, property, refined } from "./page.mjs";

const demo = (name, attributes = "") =>
  `<backcut-set src="/web-demo/sets/${name}.json" ${attributes}></backcut-set>`;

const { open } = inBrowser();

/** Opens the cards of a set. */
async function shown(t, { name = "lighthouse", attributes = "", ...options } = {}) {
  const { page, problems } = await open(t, { body: demo(name, attributes), ...options });
  await refined(page);
  const more = page.getByRole("button", { name: "More" });
  if (await more.isVisible()) await more.click();
  await page.getByRole("button", { name: "Roles", exact: true }).click();
  await page.getByRole("group", { name: "Role cards" }).waitFor();
  return { page, problems, cards: page.locator(".roles .card:visible") };
}

const seek = (page, t) =>
  page.evaluate((time) => (document.querySelector("backcut-set").currentTime = time), t);

/** The first words of each step that is on. */
const on = (page) => page.locator(".card:visible [aria-current=step] strong").allTextContents();

test("the cards of all are there, or of those who are followed", async (t) => {
  const { page, problems, cards } = await shown(t);
  const numbers = () => cards.locator("header b").allTextContents();
  assert.deepEqual(await numbers(), ["1", "2", "3", "4", "5"]);
  await page.evaluate(() => (document.querySelector("backcut-set").follow = "2 4"));
  await page.waitForFunction(
    () =>
      document.querySelector("backcut-set").shadowRoot.querySelectorAll(".card:not([hidden])")
        .length === 2,
  );
  assert.deepEqual(await numbers(), ["2", "4"]);
  const told = await cards.first().textContent();
  for (const words of ["shooter", "Start in the left corner.", "Plant 0.2 s before 3 is past 5."]) {
    assert.ok(told.includes(words), told);
  }
  assert.deepEqual(await audit(page), []);
  assert.deepEqual(problems, []);
});

test("the step that is on is marked as time goes, and a press on a step goes there", async (t) => {
  const { page } = await shown(t, { attributes: 'follow="3"' });
  await seek(page, 0);
  assert.deepEqual(await on(page), []);
  await seek(page, 2);
  assert.deepEqual(await on(page), ["Sprint off 5 and 1 to the top."]);
  await page.getByRole("button", { name: /^Hold your place at the top/ }).click();
  assert.deepEqual(await on(page), ["Hold your place at the top."]);
  const time = await property(page, "currentTime");
  assert.ok(time > 5 && time < 5.5, `${time}`);
  // While it plays as well.
  await seek(page, 0.9);
  await page.evaluate(() => document.querySelector("backcut-set").play());
  await page.waitForFunction(() =>
    document.querySelector("backcut-set").shadowRoot.querySelector("[aria-current=step]"),
  );
  await page.evaluate(() => document.querySelector("backcut-set").pause());
});

test("another set and another line have other cards", async (t) => {
  const { page, cards } = await shown(t, { name: "turnstile", attributes: 'follow="3"' });
  assert.ok((await cards.textContent()).includes("Sprint between 4 and 5 to the top."));
  await page.evaluate(() => (document.querySelector("backcut-set").read = "1"));
  await page.getByText("Fade to the right slot.", { exact: true }).waitFor();
  await page.getByRole("button", { name: "Roles", exact: true }).click();
  assert.equal(await cards.count(), 0);
});

test("the cards that are shown are printed alone", async (t) => {
  const { page, problems } = await open(t, { body: demo("turnstile", 'follow="4 5"') });
  await refined(page);
  await page.getByRole("button", { name: "Roles", exact: true }).click();
  await page.getByRole("group", { name: "Role cards" }).waitFor();
  const paper = await page.evaluate(() => {
    const { shadowRoot } = document.querySelector("backcut-set");
    const told = {};
    new MutationObserver((_, observer) => {
      const frame = shadowRoot.querySelector("iframe");
      if (!frame) return;
      observer.disconnect();
      frame.contentWindow.print = () => {};
    }).observe(shadowRoot, { childList: true, subtree: true });
    shadowRoot.querySelector(".roles .line button").click();
    const { body } = shadowRoot.querySelector("iframe").contentDocument;
    told.cards = body.querySelectorAll("article").length;
    told.pictures = body.querySelectorAll("svg").length;
    told.text = body.textContent;
    told.least = Math.min(
      ...[...body.querySelectorAll("p, strong, span, h2")].map((node) =>
        parseFloat(node.ownerDocument.defaultView.getComputedStyle(node).fontSize),
      ),
    );
    return told;
  });
  assert.deepEqual([paper.cards, paper.pictures], [2, 2]);
  assert.ok(paper.text.includes("With 5, set a gate for 3 at the high post."));
  assert.ok(paper.text.includes("feet planted, arms in"));
  // Nine points are twelve pixels.
  assert.ok(paper.least >= 12, `${paper.least}`);
  assert.deepEqual(problems, []);
});

test("on a phone they stand under More, one below the other", async (t) => {
  const viewport = { width: 390, height: 844 };
  const { page, cards } = await shown(t, { viewport });
  const lefts = await cards.evaluateAll((all) => all.map((card) => card.offsetLeft));
  assert.equal(new Set(lefts).size, 1);
  const press = (name) => page.locator(".roles").getByRole("button", { name }).click();
  await press("Card of 1");
  await press("Card of 2");
  assert.deepEqual(await cards.locator("header b").allTextContents(), ["2"]);
  await press("several");
  await press("Card of 5");
  assert.deepEqual(await cards.locator("header b").allTextContents(), ["2", "5"]);
  const list = page.getByRole("combobox", { name: "Follow" });
  const chosen = list.locator("option:checked");
  assert.equal(await chosen.textContent(), "Follow some");
  await list.selectOption("Follow 3");
  assert.deepEqual(await cards.locator("header b").allTextContents(), ["3"]);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  assert.ok(wide <= 390, `${wide}`);
  assert.deepEqual(await audit(page), []);
});

test("a press follows that player alone, and several with Shift, by a switch, or by key", async (t) => {
  const { page } = await open(t, { body: demo("lighthouse") });
  await refined(page);
  const pressed = () =>
    page
      .locator("[aria-label^='Follow ']")
      .evaluateAll((all) =>
        all
          .filter((one) => one.getAttribute("aria-pressed") === "true")
          .map((one) => one.textContent),
      );
  const follow = (n, options) => page.getByRole("button", { name: `Follow ${n}` }).click(options);
  await follow(1);
  assert.deepEqual(await pressed(), ["1"]);
  await follow(3);
  assert.deepEqual(await pressed(), ["3"]);
  await follow(3);
  assert.deepEqual(await pressed(), []);
  await follow(1);
  await follow(4, { modifiers: ["Shift"] });
  assert.deepEqual(await pressed(), ["1", "4"]);
  await follow(2);
  assert.deepEqual(await pressed(), ["2"]);
  // The same without a keyboard, and by the keyboard alone.
  const several = page.getByRole("button", { name: "several" });
  await several.click();
  assert.equal(await several.getAttribute("aria-pressed"), "true");
  await follow(4);
  assert.deepEqual(await pressed(), ["2", "4"]);
  await follow(2);
  assert.deepEqual(await pressed(), ["4"]);
  await several.click();
  await follow(1);
  assert.deepEqual(await pressed(), ["1"]);
  await page.getByRole("button", { name: "Follow 4" }).press("Shift+Enter");
  assert.deepEqual(await pressed(), ["1", "4"]);
  await page.keyboard.press("3");
  assert.deepEqual(await pressed(), ["1", "3", "4"]);
  await page.keyboard.press("1");
  assert.deepEqual(await pressed(), ["3", "4"]);
  await page.keyboard.press("0");
  assert.deepEqual(await pressed(), []);
});
