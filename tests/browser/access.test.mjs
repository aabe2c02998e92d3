// Every state a reader can be in, audited: WCAG 2.2 AA as far as axe-core can tell, nothing that
// runs over sideways, a focus that is seen.

import assert from "node:assert/strict";
import { test } from "node:test";
import { SET, TAG, audit, drawn, inBrowser, pixels, property, refined } from "./page.mjs";

const browser = inBrowser();
const { open } = browser;

const demo = (name, attributes = "") =>
  `<backcut-set src="/web-demo/sets/${name}.json" ${attributes}></backcut-set>`;

const button = (page, name) => page.getByRole("button", { name, exact: true });

const set = (page, names) =>
  page.evaluate((all) => Object.assign(document.querySelector("backcut-set"), all), names);

const judged = (page) =>
  page.waitForFunction(() => {
    const { looks, findings } = document.querySelector("backcut-set");
    return looks && findings;
  });

const tableIsThere = (page) =>
  page.waitForFunction(() => {
    const rows = document.querySelector("backcut-set").shadowRoot.querySelectorAll("tbody tr");
    return rows.length > 0 && [...rows].every((row) => row.children.length > 1);
  });

/** What is wrong with the page as it stands. */
async function wrong(page) {
  await drawn(page);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  return [...(over > 0 ? [`runs over by ${over} px`] : []), ...(await audit(page))];
}

/** Goes from state to state, and asks in each what is wrong. */
async function walk(page, states) {
  const found = {};
  for (const [name, reach] of states) {
    await reach(page);
    const list = await wrong(page);
    if (list.length > 0) found[name] = list;
  }
  assert.deepEqual(found, {});
}

/** From a set that is open, beside a wide or a narrow reader's own ways. */
const STATES = [
  ["paused", (page) => refined(page)],
  ["in the middle", (page) => set(page, { currentTime: 2.5 })],
  ["playing", (page) => page.evaluate(() => document.querySelector("backcut-set").play())],
  [
    "ended",
    async (page) => {
      await set(page, { currentTime: 99 });
      await page.waitForFunction(() => document.querySelector("backcut-set").ended);
    },
  ],
  ["another followed", (page) => page.evaluate(() => follow("2"))],
  [
    "defence and notes",
    async (page) => {
      await page.evaluate(() => follow(""));
      await set(page, { coverage: "chase", notes: true, currentTime: 1 });
      await judged(page);
    },
  ],
  [
    "all defences",
    async (page) => {
      await page.getByText("Against every defence").click();
      await tableIsThere(page);
    },
  ],
];

const KEYS = [
  "list of keys",
  async (page) => {
    await page.getByRole("slider").focus();
    await page.keyboard.press("?");
    await page.getByRole("dialog").waitFor();
  },
];

/** What the pages of this file can do by name. */
async function helped(page) {
  await page.evaluate(() => {
    globalThis.follow = (who) => document.querySelector("backcut-set").setAttribute("follow", who);
  });
}

for (const colorScheme of ["light", "dark"]) {
  test(`wide, ${colorScheme}: an audit finds nothing in any state`, async (t) => {
    const { page } = await open(t, { colorScheme, body: demo("fogbank") });
    await helped(page);
    await walk(page, [
      ...STATES,
      ["without captions", (p) => button(p, "Captions").click()],
      ["what holds it up", (p) => button(p, "What holds it up").click()],
      [
        "just wide enough for all buttons",
        async (p) => {
          await p.setViewportSize({ width: 660, height: 600 });
          await drawn(p);
          await button(p, "More").waitFor();
        },
      ],
      ["wide again", (p) => p.setViewportSize({ width: 820, height: 1000 })],
      [
        "on the whole screen",
        async (p) => {
          await button(p, "Full screen").click();
          await p.waitForFunction(() => document.fullscreenElement);
          await button(p, "Close").waitFor();
        },
      ],
      [
        "in the whole window",
        async (p) => {
          await p.evaluate(() => document.exitFullscreen());
          await p.evaluate(() => {
            Element.prototype.requestFullscreen = () => Promise.reject(new Error("not allowed"));
          });
          await button(p, "Full screen").click();
          await button(p, "Close").waitFor();
        },
      ],
      ["in a low window", (p) => p.setViewportSize({ width: 820, height: 480 })],
      KEYS,
    ]);
  });

  test(`320 px wide, ${colorScheme}: an audit finds nothing in any state`, async (t) => {
    const viewport = { width: 320, height: 640 };
    const body = demo("breakwater");
    const { page } = await open(t, { viewport, colorScheme, body, hasTouch: true });
    await helped(page);
    await walk(page, [
      ...STATES,
      ["more", (p) => button(p, "More").click()],
      ["all rows", (p) => button(p, "all rows").click()],
      ["close-up", (p) => set(p, { currentTime: 2.5 })],
      ["close-up large", (p) => button(p, "Close-up: show large").click()],
      KEYS,
    ]);
  });

  test(`without a set, ${colorScheme}: an audit finds nothing`, async (t) => {
    const poster = '<a href="/told.json">Harbour</a><ol><li>Enter</li></ol>';
    const stays = new Promise(() => {});
    browser.server.answers["/never.json"] = { delay: stays };
    const states = [
      ["on its way", `<backcut-set src="/never.json"></backcut-set>`, "Loading the set"],
      ["poster", `<backcut-set src="/never.json">${poster}</backcut-set>`, "Harbour"],
      ["fault", '<backcut-set src="/wrong.json"></backcut-set>', "cannot be shown"],
      ["fault beside a poster", `<backcut-set src="/no.json">${poster}</backcut-set>`, "Enter"],
    ];
    const { page } = await open(t, { colorScheme, body: "", wait: false });
    await walk(
      page,
      states.map(([name, body, words]) => [
        name,
        async (p) => {
          await p.evaluate((html) => (document.querySelector("main").innerHTML = html), body);
          await p.getByText(words).first().waitFor();
        },
      ]),
    );
  });
}

test("without wasm an audit finds nothing", async (t) => {
  const { page } = await open(t, { body: "", wait: false });
  await page.route(/backcut_bg/, (route) => route.abort());
  await page.evaluate((html) => (document.querySelector("main").innerHTML = html), TAG);
  await page.getByRole("alert").waitFor();
  assert.deepEqual(await wrong(page), []);
});

for (const [name, context] of [
  ["twice as large, in a window of 820 × 1000", { viewport: { width: 410, height: 500 } }],
  ["four times as large, in a window of 1280 × 1024", { viewport: { width: 320, height: 256 } }],
  ["in forced colours", { forcedColors: "active" }],
  ["with less motion", { reducedMotion: "reduce" }],
]) {
  test(`${name} an audit finds nothing, and all is there`, async (t) => {
    const density = { deviceScaleFactor: context.viewport ? 820 / context.viewport.width : 1 };
    const body = demo("breakwater", 'coverage="chase" notes');
    const { page } = await open(t, { ...density, ...context, body });
    await refined(page);
    await judged(page);
    assert.deepEqual(await wrong(page), []);
    const more = button(page, "More");
    if (await more.isVisible()) await more.click();
    for (const word of ["Captions", "Full screen", "Notes", "Keys"]) {
      assert.equal(await button(page, word).isVisible(), true, word);
    }
    assert.deepEqual(await wrong(page), []);
  });
}

for (const [colorScheme, ground] of [
  ["light", 255],
  ["dark", 0],
]) {
  test(`forced colours, ${colorScheme}, hold on the court too, whatever the page wants`, async (t) => {
    const body = TAG.replace(" src", ' theme="dark" src');
    const { page } = await open(t, { forcedColors: "active", colorScheme, body });
    const corner = await page.evaluate(() => {
      const canvas = document.querySelector("backcut-set").shadowRoot.querySelector("canvas");
      return [...canvas.getContext("2d").getImageData(0, 0, 1, 1).data];
    });
    const reader = page.locator(".reader");
    const paper = await reader.evaluate((node) => getComputedStyle(node).backgroundColor);
    assert.equal(paper, `rgb(${ground}, ${ground}, ${ground})`);
    assert.deepEqual(corner, [ground, ground, ground, 255]);
    const ink = await reader.evaluate((node) => getComputedStyle(node).color);
    assert.equal(ink, `rgb(${255 - ground}, ${255 - ground}, ${255 - ground})`);
  });
}

test("on a page from right to left nothing runs over, and time still runs to the right", async (t) => {
  for (const width of [820, 320]) {
    const { page } = await open(t, { body: TAG, viewport: { width, height: 900 } });
    await page.evaluate(() => (document.documentElement.dir = "rtl"));
    await refined(page);
    assert.deepEqual(await wrong(page), []);
    const middle = async (name) => {
      const box = await button(page, name).boundingBox();
      return box.x + box.width / 2;
    };
    assert.ok((await middle("Previous beat")) < (await middle("Next beat")));
    const slider = page.getByRole("slider");
    const box = await slider.boundingBox();
    await page.mouse.click(box.x + box.width - 2, box.y + box.height / 2);
    assert.ok((await property(page, "currentTime")) > 0.9 * (await property(page, "duration")));
    // An English sentence ends in its full stop, not begins with it.
    const direction = await page
      .locator(".captions p")
      .first()
      .evaluate((p) => getComputedStyle(p).unicodeBidi);
    assert.equal(direction, "plaintext");
    // The controls begin at the right; the court lies as it lies.
    if (width < 600) continue;
    const left = async (name) => (await button(page, name).first().boundingBox()).x;
    assert.ok(
      (await left("Play")) > (await left("Half")) &&
        (await left("Follow 1")) > (await left("Follow 2")),
    );
    const floor = await pixels(page, 0);
    await page.evaluate(() => (document.documentElement.dir = "ltr"));
    assert.ok((await left("Play")) < (await left("Half")));
    assert.deepEqual(await pixels(page, 0), floor);
  }
});

test("on a page from right to left, in a script of its own, names and numbers stay in order", async (t) => {
  const arabic = {
    ...SET,
    title: "ميناء 2",
    beats: SET.beats.map((beat) => ({ ...beat, title: "قطع (1)", say: "1 يمرر إلى 2." })),
  };
  browser.server.answers["/arabic.json"] = {
    type: "application/json",
    body: JSON.stringify(arabic),
  };
  const { page } = await open(t, {
    body: '<div lang="ar" dir="rtl"><backcut-set src="/arabic.json"></backcut-set></div>',
  });
  await refined(page);
  assert.deepEqual(await wrong(page), []);
  /** From where to where the text of a node runs, by the places of its characters. */
  const places = (selector, ...parts) =>
    page
      .locator(selector)
      .first()
      .evaluate((node, wanted) => {
        const text = node.firstChild;
        return wanted.map((part) => {
          const range = document.createRange();
          range.setStart(text, text.data.indexOf(part));
          range.setEnd(text, text.data.indexOf(part) + part.length);
          return range.getBoundingClientRect().x;
        });
      }, parts);
  const [name, number] = await places("h2", "ميناء", "2");
  assert.ok(name > number, "a name in Arabic is read from the right");
  const [beat, of] = await places(".count", "beat 1", "of 3");
  assert.ok(beat < of, "English words beside it from the left");
  const [one, two] = await places(".captions p", "1", "2");
  assert.ok(one > two, "and a sentence in Arabic from the right");
});

for (const [width, theme, forcedColors] of [
  [820, "light", "none"],
  [320, "dark", "none"],
  [820, "light", "active"],
]) {
  test(`at ${width} px, ${theme}, forced colours ${forcedColors}, every control is reached by tab and shows it`, async (t) => {
    const body = demo("breakwater", `coverage="chase" notes theme="${theme}"`);
    const { page } = await open(t, { viewport: { width, height: 900 }, forcedColors, body });
    await refined(page);
    await judged(page);
    if (width < 600) await button(page, "More").click();
    await page.evaluate(() => (document.querySelector("backcut-set").currentTime = 2.5));
    await page.locator("h1").click();
    const there = await page.evaluate(() => {
      const { shadowRoot } = document.querySelector("backcut-set");
      const able = "a[href],button,select,summary,input,[tabindex='0']";
      return [...shadowRoot.querySelectorAll(able)].filter((e) => e.checkVisibility()).length;
    });
    const reached = [];
    for (let i = 0; i <= there; i += 1) {
      await page.keyboard.press("Tab");
      const focus = await page.evaluate(() => {
        const now = document.activeElement?.shadowRoot?.activeElement;
        if (!now) return null;
        const { outlineStyle, outlineWidth, outlineColor, color } = getComputedStyle(now);
        const { width, height } = now.getBoundingClientRect();
        const name = now.getAttribute("aria-label") ?? now.textContent;
        const seen =
          outlineStyle === "solid" && parseFloat(outlineWidth) >= 2 && width * height > 0;
        return { name, seen, outlineColor, color };
      });
      if (focus) reached.push(focus);
    }
    assert.equal(reached.length, there);
    assert.deepEqual(
      reached.filter(({ seen }) => !seen),
      [],
    );
  });
}
