// What judging a set shows: five defenders, looks, notes with flags, the table of all defences.

import assert from "node:assert/strict";
import { test } from "node:test";
import { TAG, audit, inBrowser, pixels, property, refined } from "./page.mjs";

const demo = (name, attributes = "") =>
  `<backcut-set src="/web-demo/sets/${name}.json" ${attributes}></backcut-set>`;

const browser = inBrowser();
const { open } = browser;

/** Resolves once the set has been judged as its attributes ask. */
const judged = (page) =>
  page.waitForFunction(() => {
    const set = document.querySelector("backcut-set");
    return (!set.coverage || set.looks) && (!set.notes || set.findings);
  });

const seek = (page, t) =>
  page.evaluate((time) => (document.querySelector("backcut-set").currentTime = time), t);

test("a defence comes when it is asked for, and goes again", async (t) => {
  const { page, problems } = await open(t, { body: TAG.replace("set.json", "told.json") });
  await refined(page);
  const alone = await pixels(page, 1);
  await page.getByRole("button", { name: "Defence", exact: true }).click();
  const list = page.getByRole("combobox", { name: "Defence" });
  await list.waitFor();
  await judged(page);
  assert.equal(await property(page, "coverage"), "chase");
  assert.equal(await list.inputValue(), "chase");
  const chased = await pixels(page, 1);
  assert.notDeepEqual(chased, alone);
  await list.selectOption({ index: 0 });
  assert.equal(await property(page, "coverage"), "");
  assert.equal(await property(page, "looks"), null);
  assert.deepEqual(await pixels(page, 1), alone);
  assert.deepEqual(problems, []);
});

test("only defences that the set can meet are offered", async (t) => {
  const offered = async (name) => {
    const { page } = await open(t, { body: demo(name, 'coverage="chase"') });
    await judged(page);
    const options = page.getByRole("combobox", { name: "Defence" }).locator("option");
    return options.evaluateAll((all) => all.map((option) => option.value));
  };
  const [ballScreens, gate] = [await offered("breakwater"), await offered("turnstile")];
  assert.ok(ballScreens.includes("drop") && ballScreens.includes("blitz"));
  assert.ok(gate.includes("top-lock"));
  assert.ok(!gate.includes("drop") && !gate.includes("blitz"), gate.join());
});

test("the page can ask for a defence and read the looks", async (t) => {
  const { page } = await open(t, { body: demo("turnstile", 'coverage="switch"') });
  await judged(page);
  const looks = await property(page, "looks");
  assert.ok(looks.length >= 2);
  for (const look of looks) {
    assert.ok(look.t > 0 && look.separation > 0 && look.text.startsWith(look.title));
  }
  const before = looks.map((look) => look.open);
  await seek(page, 0);
  await page.getByRole("img", { name: /X1 is \d\.\d m from the ball/ }).waitFor();
  await page.evaluate(() => (document.querySelector("backcut-set").coverage = "chase"));
  const chased = (await property(page, "looks")).map((look) => look.open);
  assert.notDeepEqual(chased, before);
});

test("paused at a look it is told, and measured on the court", async (t) => {
  const { page } = await open(t, { body: demo("turnstile", 'coverage="chase"') });
  await judged(page);
  const look = (await property(page, "looks")).at(-2);
  await seek(page, look.t + 0.1);
  await page.getByText(look.text, { exact: true }).waitFor();
  await seek(page, 0);
  await page.getByText(look.text, { exact: true }).waitFor({ state: "hidden" });
});

test("a defence by a wrong name is said, with the right ones", async (t) => {
  const { page } = await open(t, { body: demo("turnstile", 'coverage="zone"') });
  const note = page.getByRole("alert");
  await note.getByText("zone").waitFor();
  assert.match(await note.textContent(), /chase, over/);
  await page.evaluate(() => (document.querySelector("backcut-set").coverage = "chase"));
  await page.waitForFunction(() => document.querySelector("backcut-set").looks);
  assert.equal(await note.isVisible(), false);
});

test("a set that goes while its cures are looked for leaves nothing behind", async (t) => {
  const { page, problems } = await open(t, { body: demo("fogbank", 'coverage="chase"') });
  await page.waitForFunction(() => document.querySelector("backcut-set").looks);
  const cured = await page.evaluate(async () => {
    const set = document.querySelector("backcut-set");
    set.notes = true;
    const rest = () => new Promise((resolve) => setTimeout(resolve));
    const cures = set.findings.filter(({ cure }) => cure).length;
    // Another level opens the set anew; the one before is gone in the middle of its search.
    set.setAttribute("level", "high school");
    await set.ready;
    for (let i = 0; i < 20; i += 1) await rest();
    set.coverage = "zone";
    for (let i = 0; i < 20; i += 1) await rest();
    set.remove();
    // Longer than it may come back without loading anew.
    for (let i = 0; i < 40; i += 1) await rest();
    return cures;
  });
  assert.equal(cured, 0, "the search had not ended");
  assert.deepEqual(problems, []);
});

test("notes are listed with cures, and each shows its instant", async (t) => {
  const { page } = await open(t, { body: demo("fogbank") });
  await refined(page);
  await page.getByRole("button", { name: "Notes", exact: true }).click();
  await judged(page);
  const findings = await property(page, "findings");
  assert.ok(findings.some(({ severity }) => severity === "violation"));
  const items = page.getByRole("listitem");
  assert.equal(await items.count(), findings.length);
  // They are looked for in slices, and come together.
  await page.waitForFunction(() =>
    document.querySelector("backcut-set").findings.some(({ cure }) => cure),
  );
  const [first] = findings;
  await items.first().getByText(first.text).waitFor();
  await items.first().getByRole("button").click();
  assert.equal(await property(page, "currentTime"), first.t);
  await page.getByText("the referee decides what is called").waitFor();
  await page.getByRole("button", { name: "Notes", exact: true }).click();
  assert.equal(await items.count(), 0);
});

test("a read that never comes up is noted once every defence was tried, with a flag", async (t) => {
  const set = {
    ...{ backcut: 1, title: "Never", court: "fiba" },
    players: { 1: { at: "top", ball: true }, 2: { at: "left wing" } },
    beats: [
      {
        actions: [
          { id: "in", who: 1, do: "pass", to: 2 },
          { who: 2, do: "shot" },
        ],
      },
    ],
    reads: [
      {
        ...{ title: "Wait", at: { id: "in", edge: "release" }, by: [2], if: { coverage: "ice" } },
        beats: [{ actions: [{ who: 2, do: "hold" }] }],
      },
    ],
  };
  browser.server.answers["/never.json"] = { type: "application/json", body: JSON.stringify(set) };
  const { page, problems } = await open(t, {
    body: '<backcut-set src="/never.json" notes></backcut-set>',
  });
  const note = page.locator(".notes li", { hasText: "“Wait” never comes up" });
  await note.waitFor();
  const letter = await note.locator(".mark b").textContent();
  assert.match(letter, /^[a-z]$/);
  assert.deepEqual(
    (await property(page, "findings")).map((found) => [found.code, found.letter]).at(0),
    ["read-never", letter],
  );
  // The line of the read says nothing of it: there it is made.
  await page.evaluate(() => (document.querySelector("backcut-set").read = "1"));
  await note.waitFor({ state: "detached" });
  assert.deepEqual(problems, []);
});

test("what the defence shows is noted too, and goes with it", async (t) => {
  const { page } = await open(t, { body: demo("turnstile", 'coverage="chase" notes') });
  await judged(page);
  const told = async () => (await property(page, "findings")).map(({ text }) => text);
  assert.ok((await told()).some((text) => text.startsWith("If they chase")));
  await page.evaluate(() => (document.querySelector("backcut-set").coverage = ""));
  assert.ok(!(await told()).some((text) => text.startsWith("If they")));
});

test("the table shows every defence, and a cell shows its look", async (t) => {
  const { page } = await open(t, { body: demo("turnstile", 'coverage="chase"') });
  await judged(page);
  await page.getByText("Against every defence").click();
  const rows = page.locator("tbody tr");
  const offered = await page
    .getByRole("combobox", { name: "Defence" })
    .locator("option")
    .evaluateAll((all) => all.length - 1);
  await page.waitForFunction((count) => {
    const made = document.querySelector("backcut-set").shadowRoot.querySelectorAll("tbody tr");
    return made.length === count && [...made].every((row) => row.children.length > 1);
  }, offered);
  const looks = await property(page, "looks");
  // One more for the line that answers.
  assert.equal(await rows.first().locator("td").count(), looks.length + 1);
  assert.equal(await rows.first().getAttribute("aria-current"), "true");
  const cell = rows.nth(1).locator("td button").nth(1);
  const seconds = parseFloat(await cell.textContent());
  await cell.click();
  const other = await property(page, "coverage");
  assert.notEqual(other, "chase");
  const look = (await property(page, "looks"))[1];
  assert.equal(await property(page, "currentTime"), look.t);
  assert.ok(Math.abs(Math.max(0, look.open) - seconds) <= 0.051);
  assert.equal(await rows.nth(1).getAttribute("aria-current"), "true");
});

test("what holds the set up is shown in the strip, and goes again", async (t) => {
  const { page } = await open(t, { body: TAG.replace("set.json", "told.json") });
  await refined(page);
  const strip = () => pixels(page, 2);
  const plain = await strip();
  const toggle = page.getByRole("button", { name: "What holds it up" });
  await toggle.click();
  await page.getByText("time to spare").waitFor();
  assert.equal(await toggle.getAttribute("aria-pressed"), "true");
  assert.notDeepEqual(await strip(), plain);
  await toggle.click();
  assert.deepEqual(await strip(), plain);
});

test("without the full module the set plays on, and may ask again", async (t) => {
  const { page } = await open(t, { body: TAG.replace("set.json", "told.json") });
  await refined(page);
  await page.route(/full_bg/, (route) => route.abort());
  const opener = page.getByRole("button", { name: "Defence", exact: true });
  const failed = page.waitForEvent("requestfailed");
  await opener.click();
  await failed;
  await page.getByRole("button", { name: "Play", exact: true }).click();
  assert.equal(await property(page, "paused"), false);
  await page.unroute(/full_bg/);
  await opener.click();
  await judged(page);
  await page.getByRole("combobox", { name: "Defence" }).waitFor();
});

for (const [width, theme] of [
  [820, "light"],
  [390, "dark"],
]) {
  test(`an audit finds nothing with all of it shown, at ${width} px, ${theme}`, async (t) => {
    const body = demo("fogbank", `coverage="chase" notes theme="${theme}"`);
    const { page } = await open(t, { viewport: { width, height: 900 }, body });
    await judged(page);
    await page.getByText("Against every defence").click();
    await page.locator("tbody td").first().waitFor();
    assert.deepEqual(await audit(page), []);
  });
}
