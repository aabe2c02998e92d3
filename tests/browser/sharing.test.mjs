// Sharing a set: whatever is copied is pasted again and played.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import jsQR from "jsqr";
import { SET, TAG, audit, inBrowser, pace, pixels, property, refined } from "./page.mjs";

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

test("a tag has what the element was told, and a link for who has no script", async (t) => {
  const told =
    'id="here" class="big" onclick="0" sync="pair" coverage="switch" poster="/icon" share="/club/open.html"';
  const { page } = await sharing(t, { body: TAG.replace("<backcut-set", `<backcut-set ${told}`) });
  const tag = await copied(page, "Copy tag");
  const link = await copied(page, "Copy link");
  const there = await pasted(t, tag.replace(/<script.*<\/script>/, ""));
  const attributes = await there.page.evaluate(() =>
    Object.fromEntries(
      [...document.querySelector("backcut-set").attributes].map(({ name, value }) => [name, value]),
    ),
  );
  const { origin } = browser.server;
  assert.deepEqual(attributes, {
    src: `${origin}/set.json`,
    poster: `${origin}/icon`,
    coverage: "switch",
    share: `${origin}/club/open.html`,
  });
  const instead = there.page.getByRole("link", { name: SET.title });
  assert.equal(await instead.getAttribute("href"), link);
});

/** The set in the page itself. @param {string} [attributes] */
const inPage = (attributes = "") =>
  `<backcut-set ${attributes}><script type="application/json">${JSON.stringify(SET)}</script></backcut-set>`;

/** The middle of everybody who plays. @param {import("playwright-core").Page} page */
const places = (page) =>
  page.evaluate(() => {
    const set = document.querySelector("backcut-set");
    set.currentTime = 1;
    return [...set.frame].map((number) => number.toFixed(3));
  });

test("a set that stands in the page is copied with its tag, and mirrored once", async (t) => {
  const { page } = await sharing(t, { body: inPage("mirrored") });
  const tag = await copied(page, "Copy tag");
  const there = await pasted(t, tag);
  await ready(there.page);
  assert.equal(await there.page.locator("h2").textContent(), SET.title);
  assert.deepEqual(await places(there.page), await places(page));
});

test("a set that lies in no file is copied as one", async (t) => {
  const { page } = await sharing(t, { body: inPage() });
  assert.equal(await page.getByRole("link", { name: "Download set" }).isVisible(), false);
  const file = await copied(page, "Copy set file");
  assert.equal(JSON.parse(file).title, SET.title);
  browser.server.answers["/kept.json"] = { type: "application/json", body: file };
  const there = await browser.open(t, { body: TAG.replace("set.json", "kept.json") });
  assert.deepEqual(await places(there.page), await places(page));
});

test("a copied frame plays on another page", async (t) => {
  const { page } = await sharing(t);
  const frame = await copied(page, "Copy frame");
  assert.match(frame, /title="Harbour, a set play" loading="lazy"/);
  const there = await pasted(t, frame);
  const element = await there.page.waitForSelector("iframe");
  const inside = await element.contentFrame();
  await inside.waitForFunction(() => document.querySelector("backcut-set")?.readyState === 4);
  // As high as the reader is without what is there only for sharing.
  await page.keyboard.press("Escape");
  const set = await page.locator("backcut-set").boundingBox();
  assert.match(
    frame,
    new RegExp(`width="${Math.ceil(set.width)}" height="${Math.ceil(set.height)}"`),
  );
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
  // In a frame its header would stand around the set.
  assert.match(await copied(page, "Copy frame"), /src="[^"]+\/wasm\/pkg\/frame\.html#set=1\./);
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

test("a range that is paused goes on to the same end, and one watches for it", async (t) => {
  const { page } = await sharing(t);
  const link = await copied(page, "Copy link");
  const there = (await visited(t, `${link}&t=0.5,1.5&speed=0.1`)).page;
  await ready(there);
  await there.evaluate(() => {
    const set = document.querySelector("backcut-set");
    const waiting = new Set();
    globalThis.most = 0;
    const { requestVideoFrameCallback, cancelVideoFrameCallback } = set;
    set.requestVideoFrameCallback = (callback) => {
      const id = requestVideoFrameCallback.call(set, (...told) => {
        waiting.delete(id);
        callback(...told);
      });
      globalThis.most = Math.max(globalThis.most, waiting.add(id).size);
      return id;
    };
    set.cancelVideoFrameCallback = (id) => {
      waiting.delete(id);
      cancelVideoFrameCallback.call(set, id);
    };
  });
  const passes = (time) =>
    there.waitForFunction((t) => document.querySelector("backcut-set").currentTime > t, time);
  for (const time of [0.7, 0.9]) {
    await passes(time);
    await there.evaluate(async () => {
      const set = document.querySelector("backcut-set");
      set.pause();
      await set.play();
    });
  }
  await pace(there, 1);
  await there.waitForFunction(() => {
    const set = document.querySelector("backcut-set");
    return set.paused && set.currentTime === 1.5;
  });
  assert.equal(await there.evaluate(() => globalThis.most), 1);
});

test("mirrored, a set from a link stays where it is; another set is asked for nothing", async (t) => {
  const { page } = await sharing(t);
  const link = await copied(page, "Copy link");
  const there = (await visited(t, `${link}&t=1&coverage=switch`)).page;
  await ready(there);
  await there.evaluate(() => {
    const set = document.querySelector("backcut-set");
    set.currentTime = 2;
    set.mirrored = true;
  });
  await there.getByRole("button", { name: "Copy link" }).or(there.locator("h2")).first().waitFor();
  await there.waitForFunction(() => document.querySelector("backcut-set").frame[0] === 2);
  assert.equal(await property(there, "currentTime"), 2);
  const seen = await there.evaluate(async (link) => {
    const set = document.createElement("backcut-set");
    set.src = link;
    document.body.append(set);
    set.src = "/set.json";
    await set.ready;
    // The link's turn would have come by then.
    await new Promise((resolve) => setTimeout(resolve));
    return [set.currentTime, set.coverage];
  }, `${link}&t=1&coverage=switch`);
  assert.deepEqual(seen, [0, ""]);
});

test("where sharing does not come, that is said", async (t) => {
  const { page, problems } = await browser.open(t, CLIPBOARD);
  await page.route(/sharing-/, (route) => route.abort());
  await press(page, "Share");
  await page.getByText("What sharing needs did not come").waitFor();
  await page.unroute(/sharing-/);
  assert.equal(problems.filter((problem) => !/Failed to load/.test(problem)).length, 0);
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
    // There is no line to look at, and no file to look into.
    assert.doesNotMatch(await alert.textContent(), /Line|Open/);
    assert.equal((await pixels(there.page, 0)).painted, true, "the empty court");
    assert.deepEqual(there.problems, []);
  }
});

test("a second link in one frame page shows nothing of the first", async (t) => {
  const { page } = await sharing(t);
  const link = await copied(page, "Copy link");
  const there = await visited(t, `${link}&follow=2&coverage=switch&t=1`);
  await ready(there.page);
  assert.equal(await property(there.page, "coverage"), "switch");
  await there.page.evaluate((hash) => (location.hash = hash), `${link.split("#")[1]}&t=2`);
  await there.page.waitForFunction(() => {
    const set = document.querySelector("backcut-set");
    return set.readyState === 4 && set.currentTime === 2;
  });
  assert.equal(await property(there.page, "coverage"), "");
  assert.equal(await property(there.page, "follow"), "");
});

test("the demo site's page for links plays what its address holds, and says where that is nothing", async (t) => {
  const { page } = await sharing(t);
  const [, fragment] = (await copied(page, "Copy link")).split("#");
  const body = await readFile(new URL("../../web-demo/site/open.html", import.meta.url), "utf8");
  const head = '<script type="module" src="/web-demo/site/open.js"></script>';
  const there = await browser.open(t, { body, head });
  await there.page.getByText("There is no set in this address").waitFor();
  await there.page.evaluate((hash) => (location.hash = hash), fragment);
  await there.page.getByRole("heading", { name: SET.title }).waitFor();
  assert.equal(await there.page.getByText("There is no set in this address").count(), 0);
  assert.deepEqual(there.problems, []);
});

test("a frame page is shared as itself, and says where it has no set", async (t) => {
  const { server } = browser;
  const frame = `${server.origin}/wasm/pkg/frame.html`;
  const { page } = await visited(t, `${frame}#src=/set.json`);
  await ready(page);
  await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await press(page, "Share");
  const link = await copied(page, "Copy link");
  assert.ok(link.startsWith(`${frame}#set=1.`), link);
  for (const empty of [frame, `${frame}#`, `${frame}#coverage=switch`]) {
    const there = await visited(t, empty);
    await there.page.getByText("No set is in this link").waitFor();
    assert.deepEqual(there.problems, []);
  }
});

test("a frame page shows no picture of another site", async (t) => {
  const { page } = await visited(
    t,
    `${browser.server.origin}/wasm/pkg/frame.html#src=/set.json&poster=https://elsewhere.example/x.png`,
  );
  await ready(page);
  assert.equal(await page.locator("backcut-set").getAttribute("poster"), "");
});

test("what no link can ask for is passed over, and nothing is thrown", async (t) => {
  const body = TAG.replace("<backcut-set", '<backcut-set id="harbour"');
  const { page, problems } = await browser.open(t, { body });
  await refined(page);
  await page.evaluate(() => {
    location.hash = "harbour&t=Infinity&speed=Infinity&beat=-1";
  });
  await page.evaluate(() => {
    location.hash = "harbour&t=2&speed=1e9";
  });
  await page.waitForFunction(() => document.querySelector("backcut-set").currentTime === 2);
  assert.equal(await property(page, "playbackRate"), 1);
  assert.deepEqual(problems, []);
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
  [820, "dark"],
  [390, "light"],
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
