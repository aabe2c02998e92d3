// Lines other than the one drawn: chosen by the reader, the page, a link.

import assert from "node:assert/strict";
import { test } from "node:test";
import { audit, held, inBrowser, pixels, property, refined } from "./page.mjs";

const demo = (name, attributes = "") =>
  `<backcut-set id="here" src="/web-demo/sets/${name}.json" ${attributes}></backcut-set>`;

const { open } = inBrowser();

const seek = (page, t) =>
  page.evaluate((time) => (document.querySelector("backcut-set").currentTime = time), t);

/** Resolves once the line of `read` is shown, which lasts as long as no other does. */
const shown = (page, duration) =>
  page.waitForFunction(
    (seconds) => Math.abs(document.querySelector("backcut-set").duration - seconds) < 1e-9,
    duration,
  );

/** Resolves once another line is shown than the one that lasts so long. */
const left = (page, duration) =>
  page.waitForFunction(
    (seconds) => Math.abs(document.querySelector("backcut-set").duration - seconds) > 1e-9,
    duration,
  );

async function chosen(page) {
  await refined(page);
  await page.getByRole("button", { name: "What if", exact: true }).click();
  const list = page.getByRole("combobox", { name: "What if" });
  await list.waitFor();
  return list;
}

test("a read is chosen by its title, the instant is kept, and as drawn leads back", async (t) => {
  const { page, problems } = await open(t, { body: demo("turnstile") });
  const drawn = await property(page, "duration");
  const list = await chosen(page);
  await seek(page, 3);
  const frame = () => page.evaluate(() => [...document.querySelector("backcut-set").frame].join());
  const before = await frame();
  const options = await list.locator("option").allTextContents();
  assert.equal(options[0], "What if: as drawn");
  assert.ok(options.includes("What if: X5 jumps out"), options.join());
  await list.selectOption({ label: "What if: X5 jumps out" });
  await left(page, drawn);
  assert.equal(await property(page, "currentTime"), 3);
  assert.equal(await property(page, "read"), "2");
  // No line has been left by then.
  assert.equal(await frame(), before);
  await seek(page, 7.5);
  const there = await pixels(page, 1);
  await list.selectOption("");
  await shown(page, drawn);
  await seek(page, 7.5);
  assert.notEqual((await pixels(page, 1)).hash, there.hash);
  assert.deepEqual(problems, []);
});

test("the page names a read, and a beat of it has its name", async (t) => {
  const { page } = await open(t, { body: demo("turnstile", 'read="2"') });
  const list = page.getByRole("combobox", { name: "What if" });
  await list.waitFor();
  assert.equal(await list.inputValue(), "2");
  await seek(page, await property(page, "duration"));
  await page.getByRole("heading", { name: "X5 jumps out" }).waitFor();
});

test("a read that the set does not have is a fault by its name", async (t) => {
  const { page } = await open(t, { body: demo("turnstile", 'read="9"'), wait: false });
  const found = await page.waitForFunction(
    () => document.querySelector("backcut-set").error?.message,
  );
  assert.match(await found.jsonValue(), /the page asks for the read “9”/);
});

test("a set without reads offers none", async (t) => {
  const { page } = await open(t, { body: demo("fogbank", 'coverage="chase"') });
  await page.waitForFunction(() => document.querySelector("backcut-set").looks);
  assert.equal(await page.getByRole("button", { name: "What if" }).count(), 0);
  assert.equal(await page.getByRole("combobox", { name: "What if" }).count(), 0);
});

test("a link in the article takes a read, and a copied link has it", async (t) => {
  const body = `<a href="#here&read=2&t=4">What if X5 jumps out?</a>${demo("turnstile")}`;
  const { page } = await open(t, { body });
  await refined(page);
  const drawn = await property(page, "duration");
  await page.getByRole("link", { name: "What if X5 jumps out?" }).click();
  await left(page, drawn);
  assert.equal(await property(page, "currentTime"), 4);
  await page.evaluate(() => {
    navigator.clipboard.writeText = async (text) => {
      globalThis.copied = text;
    };
  });
  await page.getByRole("button", { name: "Share", exact: true }).click();
  await page.getByRole("button", { name: "Copy link", exact: true }).click();
  const link = await (await page.waitForFunction(() => globalThis.copied)).jsonValue();
  assert.match(link, /&read=2(&|$)/);
  await page.goto(link);
  await left(page, drawn);
  assert.equal(await property(page, "read"), "2");
});

test("an audit finds nothing while a read is shown", async (t) => {
  const { page } = await open(t, { body: demo("turnstile", 'read="1" coverage="chase"') });
  await page.getByRole("combobox", { name: "What if" }).waitFor();
  assert.deepEqual(await audit(page), []);
});

test("as the defence plays, another defence may lead to another line", async (t) => {
  const { page, problems } = await open(t, { body: "", wait: false });
  // Whatever of the controls is late.
  const come = await held(page, "**/late-*");
  await page.evaluate(
    (body) => {
      document.querySelector("main").innerHTML = body;
    },
    demo("gangway", 'read="defended" coverage="chase"'),
  );
  await page.waitForFunction(() => document.querySelector("backcut-set").looks);
  const drawn = await property(page, "duration");
  await page.evaluate(() => (document.querySelector("backcut-set").coverage = "top-lock"));
  await left(page, drawn);
  assert.equal(await property(page, "read"), "defended");
  come();
  await refined(page);
  await page.evaluate(() => (document.querySelector("backcut-set").coverage = "chase"));
  await shown(page, drawn);
  assert.deepEqual(problems, []);
});

test("the table of all defences names the line that answers each, and shows it", async (t) => {
  const { page } = await open(t, { body: demo("gangway", 'coverage="chase"') });
  await page.waitForFunction(() => document.querySelector("backcut-set").looks);
  const drawn = await property(page, "duration");
  await page.getByText("Against every defence").click();
  const answered = page
    .getByRole("row", { name: /top-lock/i })
    .getByRole("button")
    .last();
  await answered.waitFor();
  assert.match(await answered.getAttribute("aria-label"), /^X2 denies the first elbow\./);
  await answered.click();
  await left(page, drawn);
  assert.equal(await property(page, "coverage"), "top-lock");
  assert.equal(await property(page, "read"), "2");
  assert.deepEqual(await audit(page), []);
});

test("five play what a chosen read is an answer to", async (t) => {
  const { page } = await open(t, { body: demo("breakwater", 'coverage="chase"') });
  await page.waitForFunction(() => document.querySelector("backcut-set").looks);
  const list = await chosen(page);
  await list.selectOption({ label: "What if: They tag 5" });
  await page.waitForFunction(() => document.querySelector("backcut-set").read === "1");
  assert.equal(await property(page, "coverage"), "weak-side-tag");
  // What asks for no coverage leaves the chosen one.
  await list.selectOption({ label: "What if: X5 is late" });
  await page.waitForFunction(() => document.querySelector("backcut-set").read === "2");
  assert.equal(await property(page, "coverage"), "weak-side-tag");
});

test("a beat and an instant in a link are those of the line that it names", async (t) => {
  for (const words of ["read=2&beat=3", "read=2&t=9.55"]) {
    const body = `<a href="#here&${words}">There</a>${demo("turnstile")}`;
    const { page } = await open(t, { body, wait: false });
    // What knows other lines may be longer on its way than a reader waits.
    const come = await held(page, "**/full*.wasm");
    await page.reload();
    await refined(page);
    const drawn = await page.evaluate(() => {
      const set = document.querySelector("backcut-set");
      set.beat = 3;
      return { third: set.currentTime, duration: set.duration };
    });
    await seek(page, 0);
    await page.getByRole("link", { name: "There" }).click();
    await page.waitForFunction(() => document.querySelector("backcut-set").read === "2");
    come();
    await left(page, drawn.duration);
    const time = await property(page, "currentTime");
    if (words.endsWith("beat=3")) {
      assert.notEqual(time, drawn.third);
      assert.equal(await property(page, "beat"), 3);
    } else assert.equal(time, 9.55);
  }
});

test("where what knows reads does not come, the line drawn is shown", async (t) => {
  const { page } = await open(t, { body: demo("turnstile") });
  const drawn = await property(page, "duration");
  await page.route("**/full*", (route) => route.abort());
  await page.reload();
  await page.evaluate(
    (body) => {
      document.querySelector("main").innerHTML = body;
      return document.querySelector("backcut-set").ready;
    },
    demo("turnstile", 'read="2"'),
  );
  assert.equal(await property(page, "duration"), drawn);
  assert.equal(await property(page, "error"), null);
});
