// Sharing a set: whatever is copied is pasted again and played.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import jsQR from "jsqr";
import { SET, TAG, audit, inBrowser, property } from "./page.mjs";

const browser = inBrowser();
const CLIPBOARD = { permissions: ["clipboard-read", "clipboard-write"] };

/** A page with the set's panel for sharing open. */
async function sharing(t, options = {}) {
  const opened = await browser.open(t, { ...CLIPBOARD, ...options });
  await press(opened.page, "Share");
  await opened.page.locator(".ways").waitFor();
  return opened;
}

const press = (page, name) => page.getByRole("button", { name, exact: true }).click();

/** What a way of sharing leaves on the clipboard. */
async function copied(page, name) {
  await press(page, name);
  await page.getByRole("status").filter({ hasText: "copied" }).waitFor();
  return page.evaluate(() => navigator.clipboard.readText());
}

/** A page that somebody else wrote, with that in its body. */
async function pasted(t, body) {
  const { server } = browser;
  const path = `/pasted-${Object.keys(server.answers).length}.html`;
  server.answers[path] = {
    type: "text/html; charset=utf-8",
    body: `<!doctype html><html lang="en"><meta charset="utf-8"><title>Theirs</title>${body}`,
  };
  return visited(t, server.origin + path);
}

async function visited(t, address) {
  const { page } = await browser.open(t, { body: "", wait: false });
  const problems = [];
  page.on("pageerror", (error) => problems.push(String(error)));
  await page.goto(address);
  return { page, problems };
}

const ready = (frame) =>
  frame.evaluate(async () => {
    await customElements.whenDefined("backcut-set");
    await document.querySelector("backcut-set").ready;
  });

/** The picture of a QR code, read by another program. */
async function decoded(t, page) {
  const png = await page.locator(".qr svg").screenshot();
  const other = await page.context().browser().newPage();
  t.after(() => other.close());
  await other.goto("about:blank");
  const { data, width, height } = await other.evaluate(
    async (bytes) => {
      const image = await createImageBitmap(new Blob([new Uint8Array(bytes)]));
      const canvas = new OffscreenCanvas(image.width, image.height);
      const context = canvas.getContext("2d");
      context.drawImage(image, 0, 0);
      const { data } = context.getImageData(0, 0, image.width, image.height);
      return { data: [...data], width: image.width, height: image.height };
    },
    [...png],
  );
  return jsQR(new Uint8ClampedArray(data), width, height)?.data;
}

test("a copied link holds the set, and opens on the package's frame page", async (t) => {
  const { page, problems } = await sharing(t, {
    body: TAG.replace("<backcut-set", '<backcut-set coverage="switch" follow="2"'),
  });
  const link = await copied(page, "Copy link");
  assert.match(link, /\/wasm\/pkg\/frame\.html#set=1\.[\w-]+&follow=2&coverage=switch$/);
  const there = await visited(t, link);
  await ready(there.page);
  assert.equal(await there.page.locator("h2").textContent(), SET.title);
  assert.equal(await property(there.page, "coverage"), "switch");
  assert.equal(await property(there.page, "duration"), await property(page, "duration"));
  assert.deepEqual([...problems, ...there.problems], []);
});

test("a link at a moment opens there, and stands", async (t) => {
  const { page } = await sharing(t);
  await page.evaluate(() => (document.querySelector("backcut-set").currentTime = 1.25));
  const way = page.getByRole("button", { name: "Copy link at 1.3 s" });
  await way.waitFor();
  const there = await visited(t, await copied(page, "Copy link at 1.3 s"));
  await ready(there.page);
  assert.equal(await property(there.page, "currentTime"), 1.25);
  assert.equal(await property(there.page, "paused"), true);
});

test("a copied tag plays on another page, by the very script of this one", async (t) => {
  const { page } = await sharing(t, { body: TAG.replace("<backcut-set", "<backcut-set mirrored") });
  const tag = await copied(page, "Copy tag");
  assert.match(
    tag,
    /<script type="module" src="http[^"]+backcut\.js" integrity="sha384-[\w+/]{64}"/,
  );
  const there = await pasted(t, tag);
  await ready(there.page);
  await there.page.evaluate(() => document.querySelector("backcut-set").play());
  await there.page.waitForFunction(() => document.querySelector("backcut-set").currentTime > 0.1);
  assert.equal(
    await there.page.evaluate(() => document.querySelector("[mirrored]") !== null),
    true,
  );
  const broken = await pasted(t, tag.replace(/sha384-./, "sha384-_"));
  assert.equal(await broken.page.evaluate(() => customElements.get("backcut-set")), undefined);
});

test("a set that stands in the page is copied with its tag", async (t) => {
  const body = `<backcut-set><script type="application/json">${JSON.stringify(SET)}</script></backcut-set>`;
  const { page } = await sharing(t, { body });
  const tag = await copied(page, "Copy tag");
  const there = await pasted(t, tag);
  await ready(there.page);
  assert.equal(await there.page.locator("h2").textContent(), SET.title);
  assert.equal(await page.getByRole("link", { name: "Download set" }).isVisible(), false);
});

test("a copied frame plays on another page", async (t) => {
  const { page } = await sharing(t);
  const frame = await copied(page, "Copy frame");
  assert.match(frame, /title="Harbour, a set play" loading="lazy"/);
  const there = await pasted(t, frame);
  const element = await there.page.waitForSelector("iframe");
  const inside = await element.contentFrame();
  await inside.waitForFunction(() => document.querySelector("backcut-set")?.readyState === 4);
  const box = await element.boundingBox();
  assert.ok(box.width / box.height > 0.5 && box.height > 400, JSON.stringify(box));
});

test("a short set fits into a QR code that another program reads", async (t) => {
  const { page } = await sharing(t);
  const link = await copied(page, "Copy link");
  await press(page, "QR code");
  assert.equal(await decoded(t, page), link);
  const there = await visited(t, link);
  await ready(there.page);
});

test("for a long set the QR code holds the page's address, and says so", async (t) => {
  const numbers = Array.from({ length: 150 }, (_, i) => Math.abs(Math.sin(i + 1)).toFixed(6));
  const long = { ...SET, about: numbers.join(" ") };
  browser.server.answers["/long.json"] = {
    type: "application/json",
    body: JSON.stringify(long),
  };
  const body = '<backcut-set id="long" src="/long.json"></backcut-set>';
  const { page } = await sharing(t, { body });
  await press(page, "QR code");
  await page.getByRole("img", { name: "QR code that opens this page" }).waitFor();
  assert.equal(await decoded(t, page), `${page.url()}#long`);
  assert.match(await page.getByRole("status").last().textContent(), /too long/);
});

test("the set file is downloaded as it lies on the server", async (t) => {
  const { page } = await sharing(t);
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("link", { name: "Download set" }).click(),
  ]);
  assert.equal(download.suggestedFilename(), "set.json");
  assert.equal(await readFile(await download.path(), "utf8"), JSON.stringify(SET));
});

test("where nothing may be copied, it is there to be copied by hand", async (t) => {
  const { page } = await sharing(t);
  await page.evaluate(() => {
    navigator.clipboard.writeText = () => Promise.reject(new DOMException("no", "NotAllowedError"));
  });
  await press(page, "Copy link");
  const field = page.getByRole("textbox", { name: "To copy" });
  await field.waitFor();
  assert.match(await field.inputValue(), /#set=1\./);
  const selected = await field.evaluate((node) => node.selectionEnd - node.selectionStart);
  assert.equal(selected, (await field.inputValue()).length);
});

test("the system's own sheet gets the set's name and the link", async (t) => {
  const { page } = await browser.open(t, CLIPBOARD);
  await page.evaluate(() => {
    navigator.share = async (shared) => void (globalThis.shared = shared);
  });
  await press(page, "Share");
  await page.locator(".ways").waitFor();
  await press(page, "Send");
  await page.waitForFunction(() => globalThis.shared);
  const { title, url } = await page.evaluate(() => globalThis.shared);
  assert.equal(title, SET.title);
  assert.equal(url, await copied(page, "Copy link"));
});

test("a page may name where links open", async (t) => {
  const body = TAG.replace("<backcut-set", '<backcut-set share="/club/open.html"');
  const { page } = await sharing(t, { body });
  const link = await copied(page, "Copy link");
  assert.ok(link.startsWith(`${browser.server.origin}/club/open.html#set=1.`), link);
});

test("a link with a range plays that, and stands at its end", async (t) => {
  const { page } = await sharing(t);
  const link = await copied(page, "Copy link");
  const there = await visited(t, `${link}&t=0.5,1.1`);
  await ready(there.page);
  await there.page.waitForFunction(() => {
    const set = document.querySelector("backcut-set");
    return set.paused && set.currentTime === 1.1;
  });
  // It goes on from there when it is asked to.
  await there.page.evaluate(() => document.querySelector("backcut-set").play());
  await there.page.waitForFunction(() => document.querySelector("backcut-set").currentTime > 1.3);
});

test("a link that mail has damaged says so, and throws nothing into the page", async (t) => {
  const { page } = await sharing(t);
  const link = await copied(page, "Copy link");
  const wrongs = [
    [link.slice(0, -5), /damaged|cut|incomplete/i],
    [link.replace("set=1.", "set=9."), /version/i],
    [`${link.split("#")[0]}#set=1.${"A".repeat(40_000)}`, /long/i],
  ];
  for (const [wrong, said] of wrongs) {
    const there = await visited(t, wrong);
    const alert = there.page.getByRole("alert");
    await alert.waitFor();
    assert.match(await alert.textContent(), said);
    assert.deepEqual(there.problems, []);
  }
});

test("Escape closes the panel and gives the focus back", async (t) => {
  const { page } = await sharing(t);
  const share = page.getByRole("button", { name: "Share", exact: true });
  assert.equal(await share.getAttribute("aria-expanded"), "true");
  await page.getByRole("button", { name: "Copy link", exact: true }).focus();
  await page.keyboard.press("Escape");
  assert.equal(await page.locator(".ways").isVisible(), false);
  assert.equal(await share.evaluate((node) => node.matches(":focus")), true);
});

for (const [width, colorScheme] of [
  [820, "light"],
  [390, "dark"],
]) {
  test(`an audit finds nothing with the panel open, at ${width} px, ${colorScheme}`, async (t) => {
    const { page } = await browser.open(t, {
      ...CLIPBOARD,
      viewport: { width, height: 1200 },
      colorScheme,
    });
    const share = page.getByRole("button", { name: "Share", exact: true });
    await page.waitForFunction(() =>
      document.querySelector("backcut-set").shadowRoot.querySelector(".sharing"),
    );
    if (!(await share.isVisible())) await press(page, "More");
    await share.click();
    await page.locator(".ways").waitFor();
    await press(page, "QR code");
    await page.locator(".qr svg").waitFor();
    assert.deepEqual(await audit(page), []);
  });
}
