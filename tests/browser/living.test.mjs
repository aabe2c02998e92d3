// The element's life in a page: loading, faults, moves, sizes, company.

import assert from "node:assert/strict";
import { test } from "node:test";
import {
  SET,
  TAG,
  event,
  held,
  inBrowser,
  near,
  pace,
  pixels,
  property,
  refined,
} from "./page.mjs";

const browser = inBrowser();
const { open } = browser;

test("it works under a strict policy without one violation", async (t) => {
  const { page, problems } = await open(t);
  await pace(page, 0.1);
  await page.getByRole("button", { name: "Play", exact: true }).click();
  await page.getByRole("button", { name: "Pause", exact: true }).click();
  await page.getByRole("button", { name: "Next beat" }).click();
  assert.deepEqual(problems, []);
});

/** Addresses of the wasm files a page asks for, from now on. */
function wasmAsked(page) {
  const asked = [];
  page.on("request", (request) => {
    const name = /([^/]*)-[0-9a-f]+\.wasm$/.exec(request.url());
    if (name) asked.push(name[1]);
  });
  return asked;
}

test("a set with words of its own does without the full module", async (t) => {
  const { page } = await open(t, { body: "", wait: false });
  const asked = wasmAsked(page);
  await page.evaluate(async () => {
    document.querySelector("main").innerHTML = '<backcut-set src="/told.json"></backcut-set>';
    const set = document.querySelector("backcut-set");
    await set.play();
    set.currentTime = set.duration;
    // Twice idle: what waits for a free moment has had one.
    for (let i = 0; i < 2; i++) await new Promise((resolve) => requestIdleCallback(resolve));
  });
  assert.deepEqual(asked, ["backcut_bg"]);
});

test("words that are left to the program come after the first picture", async (t) => {
  const { page } = await open(t, { body: "", wait: false });
  const asked = wasmAsked(page);
  await page.evaluate(async () => {
    document.querySelector("main").innerHTML = '<backcut-set src="/set.json"></backcut-set>';
    const set = document.querySelector("backcut-set");
    await set.ready;
    set.currentTime = 0.4;
  });
  await page.getByText("1 passes to 2").waitFor();
  assert.deepEqual(asked, ["backcut_bg", "full_bg"]);
  assert.equal(await property(page, "currentTime"), 0.4);
  await page.getByRole("img", { name: /^0\.4 seconds of/ }).waitFor();
});

test("it asks its own host and nobody else", async (t) => {
  const asked = [];
  const { page } = await open(t, { body: "", wait: false });
  page.on("request", (request) => asked.push(new URL(request.url())));
  await page.evaluate(() => {
    document.querySelector("main").innerHTML = '<backcut-set src="/told.json"></backcut-set>';
    return document.querySelector("backcut-set").ready;
  });
  assert.deepEqual(new Set(asked.map((url) => url.origin)), new Set([browser.server.origin]));
  assert.equal(asked.filter((url) => url.pathname.endsWith(".wasm")).length, 1);
});

test("a page without a set loads no wasm", async (t) => {
  const { page } = await open(t, { body: "" });
  const names = await page.evaluate(() =>
    performance.getEntriesByType("resource").map((r) => r.name),
  );
  assert.deepEqual(
    names.filter((name) => name.endsWith(".wasm")),
    [],
  );
});

test("two sets share one module and play for themselves", async (t) => {
  const body = TAG.replace("set.json", "told.json").repeat(2);
  const { page } = await open(t, { body });
  const result = await page.evaluate(async () => {
    const [first, second] = document.querySelectorAll("backcut-set");
    first.currentTime = 2;
    await second.play();
    return {
      first: [first.currentTime, first.paused],
      second: second.paused,
      modules: performance.getEntriesByType("resource").filter((r) => r.name.endsWith(".wasm"))
        .length,
    };
  });
  assert.deepEqual(result, { first: [2, true], second: false, modules: 1 });
});

test("a file with faults shows the first with its line, and tells the page all", async (t) => {
  const { page } = await open(t, { body: "", wait: false });
  const faults = await page.evaluate(
    () =>
      new Promise((resolve) => {
        const set = document.createElement("backcut-set");
        set.addEventListener("error", (event) => resolve(event.detail.faults));
        set.src = "/wrong.json";
        document.querySelector("main").append(set);
      }),
  );
  assert.ok(faults.length >= 1);
  assert.ok(faults[0].line > 0 && faults[0].code && faults[0].message);
  const note = page.getByRole("alert");
  assert.match(await note.textContent(), /This set cannot be shown.*Line \d+/);
  assert.match(await note.getByRole("link").getAttribute("href"), /wrong\.json$/);
  assert.ok((await pixels(page, 0)).painted, "the empty court");
  const rejected = await page.evaluate(() =>
    document
      .querySelector("backcut-set")
      .play()
      .catch((e) => e.faults.length),
  );
  assert.equal(rejected, faults.length);
});

test("a file that does not come is said so, and a better address mends it", async (t) => {
  const { page } = await open(t, {
    body: '<backcut-set src="/nothing.json"></backcut-set>',
    wait: false,
  });
  await page.getByRole("alert").waitFor();
  const loaded = event(page, "loadedmetadata");
  await page.evaluate(() => {
    document.querySelector("backcut-set").src = "/set.json";
  });
  await loaded;
  assert.equal(await page.getByRole("alert").isVisible(), false);
  assert.equal(await property(page, "error"), null);
});

test("a wasm file of the wrong type loads all the same, with one warning", async (t) => {
  const { page, problems } = await open(t, { body: "", wait: false });
  await page.route(/backcut_bg/, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, headers: { "content-type": "application/octet-stream" } });
  });
  await page.evaluate(() => {
    document.querySelector("main").innerHTML = '<backcut-set src="/told.json"></backcut-set>';
    return document.querySelector("backcut-set").ready;
  });
  assert.equal(problems.length, 1);
  assert.match(problems[0], /Content-Type of \S+\.wasm is not application\/wasm/);
});

test("without wasm the page's own picture stays, with a way to the file", async (t) => {
  const { page, problems } = await open(t, { body: "", wait: false });
  await page.route(/backcut_bg/, (route) => route.abort());
  await page.evaluate(() => {
    const set = document.createElement("backcut-set");
    set.src = "/told.json";
    set.innerHTML = "<p>1 passes, 1 cuts.</p>";
    document.querySelector("main").append(set);
    return set.ready.catch(() => {});
  });
  await page.getByText("1 passes, 1 cuts.").waitFor();
  await page.getByRole("link", { name: "Open the set file" }).waitFor();
  // The browser's own word on the request; nothing of ours is thrown into the page.
  assert.deepEqual(
    problems.filter((text) => !text.includes("net::ERR_FAILED")),
    [],
  );
});

test("a set may stand in the page itself", async (t) => {
  const body = `<backcut-set><script type="application/json">${JSON.stringify(SET)}</script></backcut-set>`;
  const { page } = await open(t, { body });
  assert.ok((await property(page, "duration")) > 0);
});

test("while it waits it says so, and keeps what stood there; play is remembered", async (t) => {
  let come = () => {};
  browser.server.answers["/slow.json"] = {
    type: "application/json",
    body: JSON.stringify(SET),
    delay: new Promise((resolve) => (come = resolve)),
  };
  const body = '<backcut-set src="/slow.json"><a href="/slow.json">The set</a></backcut-set>';
  const { page } = await open(t, { body, wait: false });
  await page.getByText("Loading the set").waitFor();
  assert.equal(await page.getByRole("link", { name: "The set" }).isVisible(), true);
  await page.getByRole("button", { name: "Play", exact: true }).click();
  assert.equal(await property(page, "paused"), false);
  come();
  await page.waitForFunction(() => document.querySelector("backcut-set").currentTime > 0);
  assert.equal(await page.getByRole("link", { name: "The set" }).isVisible(), false);
});

test("moved in the page it keeps its time and does not load anew", async (t) => {
  const { page } = await open(t, { body: `${TAG}<div id="there"></div>` });
  const result = await page.evaluate(async () => {
    const set = document.querySelector("backcut-set");
    set.currentTime = 2;
    set.playbackRate = 0.1;
    await set.play();
    document.querySelector("#there").append(set);
    const loads = () =>
      performance.getEntriesByType("resource").filter((r) => r.name.endsWith("set.json")).length;
    return {
      ready: set.readyState,
      paused: set.paused,
      time: set.currentTime >= 2,
      loads: loads(),
    };
  });
  assert.deepEqual(result, { ready: 4, paused: false, time: true, loads: 1 });
  await event(page, "timeupdate");
});

test("taken out it lets go, put back it shows the same instant", async (t) => {
  const { page } = await open(t);
  const time = await page.evaluate(async () => {
    const set = document.querySelector("backcut-set");
    set.currentTime = 2;
    set.remove();
    while (set.readyState !== 0) await new Promise((resolve) => setTimeout(resolve, 5));
    const { width } = set.shadowRoot.querySelector("canvas");
    const back = new Promise((resolve) =>
      set.addEventListener("loadedmetadata", resolve, { once: true }),
    );
    document.querySelector("main").append(set);
    await back;
    return { width, time: set.currentTime };
  });
  assert.deepEqual(time, { width: 0, time: 2 });
  await near(page);
  assert.ok((await pixels(page, 1)).painted);
});

test("it takes the width it gets, at once and sharp", async (t) => {
  const { page } = await open(t, { deviceScaleFactor: 2 });
  const wide = await pixels(page, 0);
  const css = await page.locator(".court canvas").first().boundingBox();
  assert.equal(wide.width, 2 * css.width);
  await page.setViewportSize({ width: 400, height: 800 });
  await page.waitForFunction(
    (old) => document.querySelector("backcut-set").shadowRoot.querySelector("canvas").width < old,
    wide.width,
  );
  const narrow = await pixels(page, 0);
  assert.ok(narrow.painted);
  assert.ok(narrow.width <= 2 * 400);
});

test("denser than two it does not grow", async (t) => {
  const { page } = await open(t, { deviceScaleFactor: 3 });
  const css = await page.locator(".court").boundingBox();
  assert.ok((await pixels(page, 0)).width <= 2 * css.width + 2);
});

test("without a size it waits for one", async (t) => {
  const head = '<link rel="stylesheet" href="/none.css">';
  browser.server.answers["/none.css"] = { type: "text/css", body: ".none { display: none }" };
  const { page, problems } = await open(t, { head, body: `<div class="none">${TAG}</div>` });
  assert.equal((await pixels(page, 1).catch(() => ({ painted: false }))).painted, false);
  await page.evaluate(() => document.querySelector("div").classList.remove("none"));
  await page.waitForFunction(
    () =>
      document.querySelector("backcut-set").shadowRoot.querySelectorAll("canvas")[1].width > 300,
  );
  assert.ok((await pixels(page, 1)).painted);
  assert.deepEqual(problems, []);
});

test("a page sets its own colours", async (t) => {
  const head = '<link rel="stylesheet" href="/own.css">';
  browser.server.answers["/own.css"] = {
    type: "text/css",
    body: "main { --backcut-offence: #800080 }",
  };
  const { page } = await open(t, { head });
  const found = await page.evaluate(() => {
    const canvas = document.querySelector("backcut-set").shadowRoot.querySelectorAll("canvas")[1];
    const { data } = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height);
    for (let i = 0; i < data.length; i += 4) {
      if (data[i] === 128 && data[i + 1] === 0 && data[i + 2] === 128 && data[i + 3] === 255)
        return true;
    }
    return false;
  });
  assert.equal(found, true);
});

test("a second copy of the script leaves the first alone", async (t) => {
  const { page, problems } = await open(t);
  await page.evaluate(() => import("/wasm/pkg/backcut.js?again"));
  assert.deepEqual(problems, ["<backcut-set> is defined already; the first definition stays."]);
  assert.equal(await property(page, "readyState"), 4);
});

test("a worker may import it: nothing happens", async (t) => {
  browser.server.answers["/worker.js"] = {
    type: "text/javascript",
    body: 'import "/wasm/pkg/backcut.js"; postMessage("imported");',
  };
  const { page, problems } = await open(t, { body: "" });
  const told = await page.evaluate(
    () =>
      new Promise((resolve) => {
        const worker = new Worker("/worker.js", { type: "module" });
        worker.onmessage = ({ data }) => resolve(data);
        worker.onerror = ({ message }) => resolve(message);
      }),
  );
  assert.equal(told, "imported");
  assert.deepEqual(problems, []);
});

test("the page's own styles stay outside, but for its colours", async (t) => {
  const head = '<link rel="stylesheet" href="/loud.css">';
  browser.server.answers["/loud.css"] = {
    type: "text/css",
    body: `* { text-transform: uppercase; text-indent: 3em; white-space: pre; text-shadow: 1px 1px red;
      font: italic 40px fantasy; text-align: right; color: red; cursor: wait }
      button { display: none } p { border: 5px solid red }`,
  };
  const styles = async (options) => {
    const { page } = await open(t, { body: TAG.replace("set.json", "told.json"), ...options });
    await refined(page);
    return page.evaluate(() =>
      [".play", ".captions p", "h2", "h3", "select", ".marks"].map((selector) => {
        const found = document.querySelector("backcut-set").shadowRoot.querySelector(selector);
        const style = getComputedStyle(found);
        return ["textTransform", "textIndent", "whiteSpace", "textShadow", "font", "textAlign"]
          .concat(["color", "display", "borderTopWidth"])
          .map((name) => `${selector} ${name} ${style[name]}`);
      }),
    );
  };
  assert.deepEqual(await styles({ head }), await styles({}));
});

test("thirty at once all show their first picture", async (t) => {
  const { page, problems } = await open(t, { body: TAG.repeat(30) });
  const times = await page.evaluate(() =>
    [...document.querySelectorAll("backcut-set")].map((e) => e.readyState),
  );
  assert.deepEqual(times, Array(30).fill(4));
  assert.deepEqual(problems, []);
});

test("colours that cannot be read together are replaced", async (t) => {
  const { page } = await open(t);
  await refined(page);
  const shown = (css) =>
    page.evaluate(async (css) => {
      const element = document.querySelector("backcut-set");
      for (const [name, value] of css) element.style.setProperty(`--backcut-${name}`, value);
      element.setAttribute("theme", "light");
      await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
      const reader = element.shadowRoot.querySelector(".reader");
      const style = getComputedStyle(reader);
      return ["soft", "offence", "offence-number"].map((n) => style.getPropertyValue(`--_${n}`));
    }, css);
  // Pale grey on paper, and a number in the colour of its body.
  assert.deepEqual(
    await shown([
      ["soft", "#EEEAE0"],
      ["offence", "#0B5A60"],
      ["offence-number", "#0B5A60"],
    ]),
    ["#1C2730", "#0B5A60", "#F7F3E9"],
  );
});

test("a link in the article moves the set it names, and pauses it", async (t) => {
  const article = `<p><a href="#harbour&beat=3&follow=3">When 3 is up top</a>
    <a href="#harbour&t=1.5">later</a> <a href="#elsewhere&t=1">elsewhere</a></p>`;
  const body = article + TAG.replace("<backcut-set", '<backcut-set id="harbour"');
  const { page } = await open(t, { body });
  await refined(page);
  await page.evaluate(() => document.querySelector("backcut-set").play());
  await page.getByText("When 3 is up top").click();
  await page.waitForFunction(() => document.querySelector("backcut-set").paused);
  assert.equal(await property(page, "beat"), 3);
  assert.equal(await page.locator("backcut-set").getAttribute("follow"), "3");
  await page.getByRole("link", { name: "later" }).click();
  await page.waitForFunction(() => document.querySelector("backcut-set").currentTime === 1.5);
  await page.getByText("elsewhere").click();
  assert.equal(await property(page, "currentTime"), 1.5);
});

test("a link to a set that cannot be shown throws nothing into the page", async (t) => {
  const body =
    '<a href="#broken&t=1">there</a><backcut-set id="broken" src="/wrong.json"></backcut-set>';
  const { page, problems } = await open(t, { body, wait: false });
  await page.getByRole("alert").waitFor();
  await page.evaluate(() =>
    document
      .querySelector("backcut-set")
      .play()
      .catch(() => {}),
  );
  // Its links are followed once the page has had a set that can be shown.
  await page.evaluate(() => {
    const set = document.createElement("backcut-set");
    set.src = "/told.json";
    document.querySelector("main").append(set);
    return set.ready;
  });
  await page.waitForFunction(() =>
    document.querySelectorAll("backcut-set")[1].shadowRoot.querySelector(".sheet"),
  );
  await page.evaluate(() => {
    const followed = (resolve) => addEventListener("hashchange", () => setTimeout(resolve));
    globalThis.followed = new Promise(followed);
  });
  await page.getByText("there").click();
  await page.evaluate(() => globalThis.followed);
  assert.deepEqual(problems, []);
});

test("a page that is opened by such a link starts there", async (t) => {
  const body = TAG.replace("<backcut-set", '<backcut-set id="harbour"');
  const { page } = await open(t, { body });
  await page.goto(`${page.url()}#harbour&t=2`);
  await page.reload();
  await page.waitForFunction(() => document.querySelector("backcut-set").currentTime === 2);
});

test("sets with the same sync share one clock, others do not", async (t) => {
  const one = TAG.replace("<backcut-set", '<backcut-set sync="pair"');
  const { page } = await open(t, { body: one + one + TAG });
  await refined(page);
  const times = () =>
    page.evaluate(() =>
      [...document.querySelectorAll("backcut-set")].map((set) => [set.currentTime, set.paused]),
    );
  await page.evaluate(() => (document.querySelector("backcut-set").currentTime = 1.25));
  await page.waitForFunction(
    () => document.querySelectorAll("backcut-set")[1].currentTime === 1.25,
  );
  assert.deepEqual((await times())[2], [0, true]);
  await page.evaluate(() => document.querySelectorAll("backcut-set")[1].play());
  await page.waitForFunction(() => document.querySelector("backcut-set").currentTime > 1.6);
  await page.evaluate(() => document.querySelector("backcut-set").pause());
  await page.waitForFunction(() => document.querySelectorAll("backcut-set")[1].paused);
  const [[first], [second], third] = await times();
  assert.ok(Math.abs(first - second) < 1 / 30, `${first} ${second}`);
  assert.deepEqual(third, [0, true]);
});

test("sets that are far away give their pixels back, and have them again when they come near", async (t) => {
  const { page } = await open(t, { body: TAG.repeat(20) });
  await page.waitForFunction(() => {
    const drawn = [...document.querySelectorAll("backcut-set")].map((set) =>
      [...set.shadowRoot.querySelectorAll("canvas")].some((canvas) => canvas.width > 0),
    );
    return drawn[0] && !drawn[19] && drawn.filter(Boolean).length <= 4;
  });
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await page.waitForFunction(() => {
    const width = (set) => set.shadowRoot.querySelector("canvas").width;
    const all = [...document.querySelectorAll("backcut-set")];
    return width(all.at(-1)) > 0 && width(all[0]) === 0;
  });
});

for (const width of [390, 820]) {
  test(`what comes after the first picture moves nothing, ${width} wide`, async (t) => {
    const { page } = await open(t, { body: TAG, viewport: { width, height: 1400 }, wait: false });
    const come = await held(page, /\/late-/);
    await page.reload();
    await page.evaluate(() => document.querySelector("backcut-set").ready);
    await near(page);
    const height = async () => (await page.locator("backcut-set").boundingBox()).height;
    const before = await height();
    come();
    await refined(page);
    assert.ok(Math.abs((await height()) - before) <= 1, `${before} ${await height()}`);
  });
}
