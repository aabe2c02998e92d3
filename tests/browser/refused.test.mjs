// Where something is refused, or goes wrong: wasm by the page's policy, a trap, a hostile file.
// What the page put inside the element stays, an event tells, and nothing is thrown into the page.

import assert from "node:assert/strict";
import { test } from "node:test";
import { SET, TAG, TOLD, inBrowser, pace, property, refined } from "./page.mjs";
import { POLICY } from "./server.mjs";

const browser = inBrowser();
const { open } = browser;

/** What a page gives along: a poster, the beats in words, a link. */
const GIVEN = `<svg role="img" aria-label="Harbour, beat 1" viewBox="0 0 16 10"><path d="M1 1h8"/></svg>
  <h2>Harbour</h2><ol><li>Enter: 1 passes to 2.</li></ol><a href="/told.json">The set file</a>`;

/** Resolves once `error` came; tells what it said. Asked before the page does anything. */
function listen(page) {
  return page.addInitScript(() => {
    globalThis.errors = [];
    // It does not bubble, but comes by on its way down.
    addEventListener(
      "error",
      ({ target, detail }) => {
        if (target.localName === "backcut-set") globalThis.errors.push(detail?.faults ?? []);
      },
      true,
    );
  });
}

const errors = (page) =>
  page
    .waitForFunction(() => globalThis.errors.length > 0 && globalThis.errors)
    .then((handle) => handle.jsonValue());

/** Poster, title, words and links are seen, and why nothing moves is said. */
async function seesWhatWasGiven(page) {
  await page.getByRole("img", { name: "Harbour, beat 1" }).waitFor();
  for (const [role, name] of [
    ["heading", "Harbour"],
    ["link", "The set file"],
    ["link", "Open the set file"],
  ]) {
    assert.equal(await page.getByRole(role, { name, exact: true }).isVisible(), true, name);
  }
  assert.equal(await page.getByText("1 passes to 2").isVisible(), true);
  assert.match(await page.getByRole("alert").textContent(), /cannot be shown/);
}

/** Opens a page anew under another policy. */
async function openUnder(t, policy, body) {
  const { page, problems } = await open(t, { body, wait: false });
  await page.evaluate(() => customElements.whenDefined("backcut-set"));
  await listen(page);
  browser.server.answers[new URL(page.url()).pathname].policy = policy;
  problems.length = 0;
  await page.reload();
  return { page, problems };
}

test("where the policy allows no wasm, what the page gave stays, and an event tells", async (t) => {
  const body = `<backcut-set src="/told.json">${GIVEN}</backcut-set>`;
  const policy = "default-src 'self'; script-src 'self'";
  const { page, problems } = await openUnder(t, policy, body);
  assert.deepEqual(await errors(page), [[]]);
  await seesWhatWasGiven(page);
  const rejected = await page.evaluate(() =>
    document
      .querySelector("backcut-set")
      .play()
      .catch((reason) => reason === document.querySelector("backcut-set").error),
  );
  assert.equal(rejected, true);
  // The browser's own words on its policy; nothing of ours.
  assert.deepEqual(
    problems.filter((text) => !/violates|wasm/i.test(text)),
    [],
  );
});

test("where scripts must be trusted it works without one violation", async (t) => {
  const policy = `${POLICY}; require-trusted-types-for 'script'; trusted-types 'none'`;
  const body = TAG.replace(" src", ' coverage="chase" notes src');
  const { page, problems } = await openUnder(t, policy, body);
  await refined(page);
  await page.waitForFunction(() => document.querySelector("backcut-set").looks);
  await page.getByText("Against every defence").click();
  await page.locator("tbody td").first().waitFor();
  await page.getByRole("slider").focus();
  await page.keyboard.press("?");
  await page.keyboard.press("Escape");
  await pace(page, 0.1);
  await page.getByRole("button", { name: "Play", exact: true }).click();
  await page.getByRole("button", { name: "Pause", exact: true }).click();
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  assert.deepEqual(problems, []);
});

/** From now on the page's wasm traps in whatever it is asked for while `globalThis.trapped` is set. */
function canTrap(page) {
  return page.addInitScript(() => {
    // (module (func (export "f") unreachable))
    const bytes = [0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 3, 2, 1, 0, 7, 5, 1, 1, 102, 0];
    const body = [0, 10, 5, 1, 3, 0, 0, 11];
    const { Instance, Module } = WebAssembly;
    WebAssembly.Instance = function (module, imports) {
      const { exports } = new Instance(module, imports);
      const trap = new Instance(new Module(new Uint8Array([...bytes, ...body]))).exports.f;
      const wrapped = {};
      for (const [name, value] of Object.entries(exports)) {
        wrapped[name] =
          typeof value === "function"
            ? (...given) => (globalThis.trapped ? trap() : value(...given))
            : value;
      }
      return { exports: wrapped };
    };
  });
}

test("a trap shows what the page gave, throws nothing, and a new address may mend it", async (t) => {
  const { page, problems } = await open(t, { body: "", wait: false });
  await canTrap(page);
  await listen(page);
  await page.reload();
  await page.evaluate((given) => {
    document.querySelector("main").innerHTML =
      `<backcut-set src="/told.json">${given}</backcut-set>`;
    return document.querySelector("backcut-set").ready;
  }, GIVEN);
  await refined(page);
  await pace(page, 0.1);
  await page.evaluate(() => document.querySelector("backcut-set").play());
  await page.waitForFunction(() => document.querySelector("backcut-set").currentTime > 0.1);
  await page.evaluate(() => (globalThis.trapped = true));
  assert.deepEqual(await errors(page), [[]]);
  await seesWhatWasGiven(page);
  // Whatever is done to it now.
  await page.setViewportSize({ width: 500, height: 700 });
  await page.emulateMedia({ colorScheme: "dark", reducedMotion: "reduce" });
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await page.evaluate(() => {
    const set = document.querySelector("backcut-set");
    set.currentTime = 1;
    set.coverage = "chase";
    set.notes = true;
    set.play().catch(() => {});
    return [set.frame, set.duration, set.looks, set.findings];
  });
  await seesWhatWasGiven(page);
  // Taken out for good, it is let go of.
  await page.evaluate(async () => {
    globalThis.set = document.querySelector("backcut-set");
    globalThis.set.remove();
    // Longer than it may come back without loading anew.
    for (let i = 0; i < 20; i += 1) await new Promise((resolve) => setTimeout(resolve, 5));
  });
  assert.deepEqual(problems, []);
  await page.evaluate(() => {
    globalThis.trapped = false;
    const loaded = new Promise((resolve) =>
      globalThis.set.addEventListener("loadedmetadata", resolve, { once: true }),
    );
    globalThis.set.removeAttribute("coverage");
    document.querySelector("main").append(globalThis.set);
    return loaded;
  });
  assert.equal(await property(page, "error"), null);
  assert.equal(await page.getByRole("alert").isVisible(), false);
  assert.deepEqual(problems, []);
});

for (const [what, start] of [
  [
    "the table of all defences is made",
    () => {
      document.querySelector("backcut-set").shadowRoot.querySelector("summary").click();
      setTimeout(() => (globalThis.trapped = true));
    },
  ],
  [
    "cures are looked for",
    () => {
      document.querySelector("backcut-set").notes = true;
      setTimeout(() => (globalThis.trapped = true));
    },
  ],
  [
    "the page is printed",
    () => {
      globalThis.trapped = true;
      dispatchEvent(new Event("beforeprint"));
    },
  ],
]) {
  test(`a trap while ${what} is a fault like any other`, async (t) => {
    const { page, problems } = await open(t, { body: "", wait: false });
    await canTrap(page);
    await listen(page);
    await page.reload();
    await page.evaluate(() => {
      document.querySelector("main").innerHTML =
        '<backcut-set src="/web-demo/sets/fogbank.json" coverage="chase"></backcut-set>';
    });
    await refined(page);
    await page.waitForFunction(() => document.querySelector("backcut-set").looks);
    await page.evaluate(start);
    await errors(page);
    assert.match(await page.getByRole("alert").textContent(), /cannot be shown/);
    assert.deepEqual(problems, []);
  });
}

test("each limit of a set file is a fault by its name, and the page goes on", async (t) => {
  const hold = '{"who": 2, "do": "hold"}';
  const spoilt = (change) => JSON.stringify(change(structuredClone(SET)));
  const many = (count, each) => Array.from({ length: count }, (_, i) => each(i));
  const hostile = {
    "file-too-large": " ".repeat(20_000_000),
    "too-deep": "[".repeat(200_000),
    "number-too-large": JSON.stringify(SET).replace('"top"', "[1e999, 0]"),
    "too-many-actions": JSON.stringify(SET).replace(
      '"actions":[',
      `"actions":[${`${hold},`.repeat(5000)}`,
    ),
    "too-many-fields": spoilt((set) => ({
      ...set,
      ...Object.fromEntries(many(5000, (i) => [`x-${i}`, i])),
    })),
    "list-too-long": spoilt((set) => {
      set.beats[1].actions[0].via = many(10_000, () => "top");
      return set;
    }),
    "text-too-long": spoilt((set) => {
      set.beats[1].actions[0].id = "a".repeat(100_000);
      return set;
    }),
  };
  const { page, problems } = await open(t, { body: TAG });
  for (const [code, body] of Object.entries(hostile)) {
    browser.server.answers["/hostile.json"] = { type: "application/json", body };
    const codes = await page.evaluate(
      (address) =>
        new Promise((resolve) => {
          const set = document.querySelector("backcut-set");
          const tell = ({ detail }) => resolve(detail.faults.map((fault) => fault.code));
          set.addEventListener("error", tell, { once: true });
          set.src = address;
        }),
      `/hostile.json?${code}`,
    );
    assert.ok(codes.includes(code), `${code}: ${codes}`);
    assert.ok(codes.length <= 20);
  }
  await page.evaluate(() => {
    document.querySelector("backcut-set").src = "/told.json";
    return document.querySelector("backcut-set").ready;
  });
  assert.equal(await property(page, "readyState"), 4);
  assert.deepEqual(problems, []);
});

test("markup in a set file is words, wherever it is shown", async (t) => {
  const evil = '<img src="x" onerror="globalThis.evil = 1"><script>globalThis.evil = 2</script>';
  const set = { ...structuredClone(TOLD), title: evil };
  set.beats[0].title = evil;
  set.beats[0].say = evil;
  browser.server.answers["/evil.json"] = {
    type: "application/json",
    body: JSON.stringify(set),
  };
  // Under a policy that would let it run.
  const policy = "script-src 'self' 'unsafe-inline' 'wasm-unsafe-eval'";
  const body = '<backcut-set src="/evil.json" notes></backcut-set>';
  const { page } = await openUnder(t, policy, body);
  await refined(page);
  await page.waitForFunction(() => document.querySelector("backcut-set").findings);
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  const found = await page.evaluate(() => {
    const { shadowRoot } = document.querySelector("backcut-set");
    const made = shadowRoot.querySelectorAll("img, script").length;
    return [made, globalThis.evil, shadowRoot.querySelector("h2").textContent];
  });
  assert.deepEqual(found, [0, undefined, evil]);
});
