// Every mode as it is seen: at three widths, in two schemes. Each is brought to a moment worth
// looking at, held to what a reader needs, and kept as a picture in `target/screens`.
// A phone that is turned and a window that is drawn wide keep the mode, so one page serves them all.

import assert from "node:assert/strict";
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { before, test } from "node:test";
import { root } from "../../.ci/process.mjs";
import { clip } from "./clip.mjs";
import { audit, drawn, inBrowser, pace, refined } from "./page.mjs";

const SCREENS = join(root, "target/screens");
const SIZES = [
  { width: 390, height: 844 },
  { width: 820, height: 1180 },
  { width: 1440, height: 900 },
];
const SET = "/web-demo/sets/turnstile.json";
/** The least side of what is pressed, CSS pixels: WCAG 2.2, 2.5.8. */
const TARGET = 24;

const browser = inBrowser();

before(() => mkdirSync(SCREENS, { recursive: true }));

const button = (page, name) => page.getByRole("button", { name, exact: true });
const seen = (page, name) => button(page, name).filter({ visible: true }).first();
const press = (page, name) => seen(page, name).click();

/** Seeks, and waits until the instant is drawn. */
const seek = (page, time) =>
  page.evaluate(
    (t) =>
      new Promise((drawn) => {
        const set = document.querySelector("backcut-set");
        set.requestVideoFrameCallback(drawn);
        set.currentTime = t;
      }),
    time,
  );

/** Each mode: how it is opened, what it is brought to, and where what it says stands. */
const MODES = {
  plain: { panel: ".controls", go: (page) => seek(page, 5) },
  "what-if": {
    panel: ".controls",
    async go(page) {
      if (!(await seen(page, "What if").count())) await press(page, "More");
      await press(page, "What if");
      await page
        .locator("select:visible", { hasText: "as drawn" })
        .selectOption({ label: "What if: X5 jumps out" });
      await page.waitForFunction(() => document.querySelector("backcut-set").read !== "");
      await refined(page);
      await seek(page, 7.2);
    },
  },
  followed: {
    panel: ".controls",
    async go(page) {
      await page.evaluate(() => (document.querySelector("backcut-set").follow = "3 5"));
      await seek(page, 5.6);
    },
  },
  "Walk-through": {
    panel: ".walk",
    async go(page) {
      await page.evaluate(() => (document.querySelector("backcut-set").playbackRate = 4));
      await press(page, "Go on");
      await page.locator(".walk .why", { hasText: "Beat 2" }).waitFor();
    },
  },
  Loop: {
    panel: ".loop",
    async go(page) {
      await seek(page, 4);
      await press(page, "Start here");
      await seek(page, 7);
      await press(page, "End here");
      await seek(page, 5.5);
    },
  },
  Roles: { panel: ".roles", go: (page) => seek(page, 5) },
  Quiz: {
    panel: ".quiz",
    async go(page) {
      const place = page.getByRole("application");
      if (await place.count()) await place.click();
      else if (await button(page, "Play").isVisible()) {
        await pace(page, 0.1);
        await press(page, "Play");
        await press(page, "Now");
        await pace(page, 1);
      } else {
        await page.getByRole("radio").first().check();
        await press(page, "Answer");
      }
      await page.locator(".quiz .reason", { hasText: /point/ }).waitFor();
    },
  },
  Film: {
    panel: ".film",
    attributes: 'film="/modes.webm"',
    async go(page) {
      await page.waitForFunction(() => {
        const video = document.querySelector("backcut-set").shadowRoot.querySelector("video");
        return video && video.readyState >= 2 && !video.seeking;
      });
      await seek(page, 3);
    },
  },
};

let film;

async function opened(t, name) {
  const { page, problems } = await browser.open(t, {
    body: `<backcut-set src="${SET}" coverage="chase" ${MODES[name].attributes ?? ""}></backcut-set>`,
    viewport: SIZES[0],
  });
  // The page's own colours, past its policy.
  await page.evaluate(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(":root { color-scheme: light dark; } body { margin: 16px; }");
    document.adoptedStyleSheets = [sheet];
  });
  film ??= await clip(page, 9);
  browser.server.answers["/modes.webm"] = { type: "video/webm", body: film };
  await refined(page);
  return { page, problems };
}

/** Opens a mode by its button, which a phone folds away. */
async function begin(page, name) {
  if (!/[A-Z]/.test(name)) return;
  if (!(await button(page, name).filter({ visible: true }).count())) await press(page, "More");
  await press(page, name);
  await page.locator(MODES[name].panel).waitFor();
}

/** What is wrong with what is seen, from where everything is. */
const wrong = (page, { panel, target }) =>
  page.evaluate(
    ({ panel, target }) => {
      const found = [];
      const set = document.querySelector("backcut-set");
      const root = set.shadowRoot;
      const wide = document.documentElement.clientWidth;
      if (document.documentElement.scrollWidth > wide) found.push("the page scrolls sideways");
      const tell = (e) =>
        `${e.localName}.${e.className || e.id} "${(e.textContent || e.getAttribute("aria-label") || "").trim().slice(0, 40)}"`;
      const seen = [...root.querySelectorAll("*")].filter(
        (e) =>
          e.checkVisibility({ visibilityProperty: true, opacityProperty: true }) &&
          e.getBoundingClientRect().width > 1 &&
          !e.closest("[aria-hidden=true], svg"),
      );
      for (const e of seen) {
        const { left, right } = e.getBoundingClientRect();
        const inScroll = e.closest("[data-scrolls]") || e.matches("canvas, video");
        if (!inScroll && (left < -1 || right > wide + 1)) found.push(`${tell(e)} leaves the page`);
        const words = [...e.childNodes].some((n) => n.nodeType === 3 && n.data.trim());
        const cut =
          getComputedStyle(e).overflowX !== "visible" && e.scrollWidth > e.clientWidth + 1;
        if (words && cut) found.push(`${tell(e)} is cut off`);
      }
      const pressed = seen.filter((e) => e.matches("button, select, input, summary, a[href]"));
      for (const e of pressed) {
        const { width, height } = e.getBoundingClientRect();
        const label = e.closest("label")?.getBoundingClientRect();
        const [w, h] = [Math.max(width, label?.width ?? 0), Math.max(height, label?.height ?? 0)];
        if (Math.min(w, h) < target) found.push(`${tell(e)} is ${w} by ${h}`);
      }
      for (const [i, a] of pressed.entries()) {
        const p = a.getBoundingClientRect();
        for (const b of pressed.slice(i + 1)) {
          const q = b.getBoundingClientRect();
          const x = Math.min(p.right, q.right) - Math.max(p.left, q.left);
          const y = Math.min(p.bottom, q.bottom) - Math.max(p.top, q.top);
          // The handles of a stretch may meet.
          if (x > 2 && y > 2 && !(a.matches(".handle") && b.matches(".handle")))
            found.push(`${tell(a)} lies over ${tell(b)}`);
        }
      }
      const court = root.querySelector("canvas").getBoundingClientRect();
      const said = root.querySelector(panel)?.getBoundingClientRect();
      if (court.width < Math.min(320, wide - 64)) found.push(`a court of ${court.width} pixels`);
      if (!said || said.height < 20) found.push(`${panel} says nothing`);
      return found;
    },
    { panel, target },
  );

for (const [name, { panel, go }] of Object.entries(MODES)) {
  test(`${name} at every width, light and dark`, async (t) => {
    const { page, problems } = await opened(t, name);
    await begin(page, name);
    await go(page);
    for (const size of SIZES) {
      await page.setViewportSize(size);
      for (const colorScheme of ["light", "dark"]) {
        await page.emulateMedia({ colorScheme });
        await drawn(page);
        const path = join(SCREENS, `${name.toLowerCase()}-${size.width}-${colorScheme}.png`);
        await page.screenshot({ path, fullPage: true, animations: "disabled" });
        const about = `${size.width} ${colorScheme}`;
        assert.deepEqual(await wrong(page, { panel, target: TARGET }), [], about);
        assert.deepEqual(await audit(page), [], about);
      }
    }
    assert.deepEqual(problems, []);
  });
}
