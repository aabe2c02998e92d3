// The element in the language of the page around it: Spanish where that is the page's, English else.

import assert from "node:assert/strict";
import { test } from "node:test";
import { SET, TOLD, audit, event, held, inBrowser, near, property, refined } from "./page.mjs";

const browser = inBrowser();
const { open } = browser;

const button = (page, name) => page.getByRole("button", { name, exact: true });
const within = (lang, tag = '<backcut-set src="/told.json"></backcut-set>') =>
  `<div lang="${lang}">${tag}</div>`;
const demo = (name, attributes = "") =>
  `<backcut-set src="/web-demo/sets/${name}.json" ${attributes}></backcut-set>`;

/** Changes the language around the first set. */
const turn = (page, lang) =>
  page.evaluate(
    (to) => document.querySelector("[lang] > backcut-set").parentElement.setAttribute("lang", to),
    lang,
  );

const judged = (page) => page.waitForFunction(() => document.querySelector("backcut-set").findings);

test("on a page in Spanish the controls, the caption line and the numbers are Spanish", async (t) => {
  const { page, problems } = await open(t, { body: within("es-ES", demo("fogbank", "notes")) });
  await refined(page);
  await judged(page);
  await button(page, "Ver").waitFor();
  for (const name of ["Ver", "Fase siguiente", "Lento", "Avisos", "Compartir", "Teclas"]) {
    assert.equal(await button(page, name).first().isVisible(), true, name);
  }
  assert.equal(await page.getByText("fase 1 de 2").isVisible(), true);
  assert.equal(await page.locator(".tab").textContent(), "0,00\u00a0s");
  assert.match(
    await page.getByRole("slider").getAttribute("aria-valuetext"),
    /^0,0 segundos de 6,0, fase 1/,
  );
  assert.match(await page.locator(".notes li").first().textContent(), /^.?Atención: 1 pasa/);
  assert.match(await page.locator(".about").textContent(), /^FIBA · sénior · 6,0\u00a0s$/);
  assert.match(
    await page.locator(".marks").getAttribute("aria-label"),
    /^Significado de las marcas: corte, /,
  );
  assert.deepEqual(problems, []);
});

test("what no author said is told in Spanish, in the units asked for, and turns with the page", async (t) => {
  const body = within("es-ES", '<backcut-set src="/set.json" coverage="chase"></backcut-set>');
  const { page } = await open(t, { body });
  const caption = page.locator(".captions p").first();
  const look = (unit) =>
    page.waitForFunction(
      (text) => {
        const { looks } = document.querySelector("backcut-set");
        return looks?.some((one) => one.text.includes(text));
      },
      unit,
      { polling: 50 },
    );
  await refined(page);
  await page.getByText("1 pasa a 2").first().waitFor();
  await look("\u00a0m");
  await page.evaluate(() => (document.querySelector("backcut-set").units = "feet"));
  await look("″");
  await turn(page, "en");
  await page.getByText("1 passes to 2").first().waitFor();
  await look("″");
  await page.evaluate(() => document.querySelector("backcut-set").removeAttribute("units"));
  await look(" m");
  assert.match(await caption.textContent(), /^1 passes to 2/);
});

test("numbers are written as in the page's country", async (t) => {
  for (const [lang, written] of [
    ["es", "0,00\u00a0s"],
    ["es-MX", "0.00\u00a0s"],
    ["en-GB", "0.00 s"],
    ["de", "0.00 s"],
  ]) {
    const { page } = await open(t, { body: within(lang) });
    await refined(page);
    await page.waitForFunction(
      (text) =>
        document.querySelector("backcut-set").shadowRoot.querySelector(".tab").textContent === text,
      written,
    );
  }
});

test("it is never seen in English first", async (t) => {
  const { page } = await open(t, { body: "", wait: false });
  const come = await held(page, "**/words-es-*.js");
  await page.evaluate(async (body) => {
    document.querySelector("main").innerHTML = body;
    await document.querySelector("backcut-set").ready;
  }, within("es"));
  await near(page);
  assert.equal(await button(page, "Play").count(), 0);
  const court = await page.locator(".court").boundingBox();
  come();
  await button(page, "Ver").waitFor();
  assert.deepEqual(await page.locator(".court").boundingBox(), court, "and nothing moves");
});

test("where the words in Spanish do not come, it speaks English", async (t) => {
  const { page } = await open(t, { body: "", wait: false });
  await page.route("**/words-es-*.js", (route) => route.abort());
  await page.evaluate(async (body) => {
    document.querySelector("main").innerHTML = body;
    await document.querySelector("backcut-set").ready;
  }, within("es"));
  await button(page, "Play").waitFor();
  assert.equal(await button(page, "Play").isVisible(), true);
});

test("a page in English asks for no other words", async (t) => {
  const asked = [];
  const { page } = await open(t, { body: "", wait: false });
  page.on("request", (request) => asked.push(request.url()));
  await page.evaluate(async (body) => {
    document.querySelector("main").innerHTML = body;
    await document.querySelector("backcut-set").ready;
  }, within("en"));
  await refined(page);
  assert.ok(asked.some((url) => url.includes("/late-")));
  assert.deepEqual(
    asked.filter((url) => /words|full/.test(url)),
    [],
  );
});

test("it turns with the page's language, and stays where it is", async (t) => {
  const { page, problems } = await open(t, { body: within("en") });
  await refined(page);
  await page.evaluate(() =>
    Object.assign(document.querySelector("backcut-set"), {
      currentTime: 2.5,
      playbackRate: 0.5,
      loop: true,
    }),
  );
  await button(page, "Follow 3").click();
  await button(page, "Captions").click();
  await turn(page, "es");
  await button(page, "Ver").waitFor();
  assert.equal(await property(page, "currentTime"), 2.5);
  assert.equal(await button(page, "Medio").getAttribute("aria-pressed"), "true");
  assert.equal(await button(page, "Seguir al 3").getAttribute("aria-pressed"), "true");
  assert.equal(await button(page, "Textos").getAttribute("aria-pressed"), "false");
  await button(page, "Ver").click();
  await button(page, "Pausa").waitFor();
  await turn(page, "en");
  await button(page, "Pause").waitFor();
  assert.equal(await property(page, "paused"), false);
  assert.equal(await page.locator("section.reader").count(), 1);
  assert.deepEqual(problems, []);
});

test("a mode that was on is ended when the page turns, and can be had in the other language", async (t) => {
  const { page, problems } = await open(t, { body: within("en", demo("turnstile")) });
  await refined(page);
  const panels = page.locator(".teaching > :not([hidden], [role=alert])");
  await button(page, "Film").first().click();
  await panels.first().waitFor();
  await turn(page, "es");
  await button(page, "Ver").waitFor();
  assert.equal(await panels.count(), 0);
  await button(page, "Vídeo").first().click();
  await page.getByRole("group", { name: "Vídeo" }).waitFor();
  await page.getByText("El vídeo se queda en este dispositivo.").waitFor();
  assert.deepEqual(problems, []);
});

test("two sets of one page may speak two languages, and one that is moved takes the other", async (t) => {
  const { page } = await open(t, { body: within("es") + within("en") });
  await refined(page);
  await button(page, "Ver").waitFor();
  assert.equal(await button(page, "Ver").count(), 1);
  assert.equal(await button(page, "Play").count(), 1);
  await page.evaluate(() => {
    const [spanish, english] = document.querySelectorAll("[lang] > backcut-set");
    spanish.parentElement.append(english);
  });
  await page.waitForFunction(() =>
    [...document.querySelectorAll("backcut-set")].every(
      (set) => set.shadowRoot.querySelector(".play").textContent === "Ver",
    ),
  );
});

test("the language is heard through the shadow trees around it", async (t) => {
  const { page } = await open(t, { body: '<div id="outer"></div>', wait: false });
  await page.evaluate(async () => {
    const root = document.querySelector("#outer").attachShadow({ mode: "open" });
    const set = document.createElement("backcut-set");
    set.src = "/told.json";
    root.append(set);
    await set.ready;
    globalThis.word = () => set.shadowRoot.querySelector(".play").textContent;
    globalThis.there = () => set.shadowRoot.querySelector(".sheet");
  });
  await page.waitForFunction(() => globalThis.there());
  assert.equal(await page.evaluate(() => globalThis.word()), "Play");
  await page.evaluate(() => document.querySelector("#outer").setAttribute("lang", "es"));
  await page.waitForFunction(() => globalThis.word() === "Ver");
});

test("a set that is out of the window turns too", async (t) => {
  browser.server.answers["/far.css"] = { type: "text/css", body: ".far { height: 5000px }" };
  const { page } = await open(t, {
    head: '<link rel="stylesheet" href="/far.css">',
    body: within("en") + '<div class="far"></div>',
  });
  await refined(page);
  await page.evaluate(() => scrollTo(0, 5000));
  await turn(page, "es");
  await page.evaluate(() => scrollTo(0, 0));
  await button(page, "Ver").waitFor();
  await page.waitForFunction(
    () => document.querySelector("backcut-set").shadowRoot.querySelector("canvas").width > 0,
  );
});

test("a fault is told in Spanish, and told anew when the page turns", async (t) => {
  const { page } = await open(t, {
    body: within("es", '<backcut-set src="/no.json"></backcut-set>'),
    wait: false,
  });
  const alert = page.getByRole("alert");
  await alert.getByText("Esta jugada no se puede mostrar").waitFor();
  assert.match(await alert.textContent(), /no ha llegado: 404\./);
  assert.equal(await alert.getByRole("link").textContent(), "Abrir el archivo de la jugada");
  assert.equal(
    await property(page, "error").then(String),
    await page.evaluate(() => String(document.querySelector("backcut-set").error)),
  );
  const message = await page.evaluate(() => document.querySelector("backcut-set").error.message);
  assert.equal(message, "The set file did not come: 404.", "a program is told in English");
});

test("what is wrong with a file is told in English, and marked as that", async (t) => {
  const body = within("es", '<backcut-set src="/wrong.json"></backcut-set>');
  const { page } = await open(t, { body, wait: false });
  const what = page.getByRole("alert").getByText("elbwo");
  await what.waitFor();
  assert.equal(await what.getAttribute("lang"), "en");
  assert.equal(await page.getByText("y 1 más").isVisible(), true);
});

test("where there are no words for the page's language, ours are marked as English and the author's not", async (t) => {
  const { page } = await open(t, { body: within("de") });
  await refined(page);
  const lang = (selector) =>
    page
      .locator(selector)
      .first()
      .evaluate((node) => node.closest("[lang]")?.getAttribute("lang") ?? "none");
  assert.equal(await lang(".play"), "en");
  assert.equal(await lang("h2"), "de");
  assert.equal(await lang(".captions p"), "de");
  await turn(page, "fr");
  await page.waitForFunction(
    () => document.querySelector("backcut-set").shadowRoot.querySelector("h2").lang === "fr",
  );
  await turn(page, "es");
  await button(page, "Ver").waitFor();
  assert.equal(await lang(".play"), "none", "it is the page's again");
});

test("what is lettered on the page follows: keys, sharing, the defences", async (t) => {
  const { page, problems } = await open(t, {
    body: within("es", demo("fogbank", 'coverage="chase"')),
  });
  await refined(page);
  await page.waitForFunction(() => document.querySelector("backcut-set").looks);
  await button(page, "Teclas").first().click();
  const dialog = page.getByRole("dialog", { name: "Teclas" });
  assert.equal(await dialog.getByText("Ver o pausar").isVisible(), true);
  assert.equal(await dialog.getByText("Espacio", { exact: true }).first().isVisible(), true);
  await dialog.getByRole("button", { name: "Cerrar" }).click();
  await button(page, "Compartir").first().click();
  await button(page, "Copiar enlace").waitFor();
  await page.evaluate(() => (document.querySelector("backcut-set").currentTime = 1.25));
  await button(page, "Copiar enlace a los 1,3\u00a0s").waitFor();
  await page.evaluate(() => {
    Object.defineProperty(navigator, "clipboard", {
      value: { writeText: async (text) => void (globalThis.copied = text) },
    });
  });
  await button(page, "Copiar enlace").click();
  await page.getByText("Enlace copiado.").waitFor();
  const link = await page.evaluate(() => globalThis.copied);
  assert.match(link, /#set=.*&lang=es$/);
  assert.deepEqual(problems, []);
  await page.goto(link);
  await button(page, "Ver").waitFor();
  await page.getByRole("heading", { name: "Fogbank" }).waitFor();
});

for (const [width, colorScheme] of [
  [320, "light"],
  [390, "dark"],
  [820, "light"],
]) {
  test(`at ${width} px in Spanish an audit finds nothing and nothing runs over`, async (t) => {
    const { page } = await open(t, {
      viewport: { width, height: 1000 },
      colorScheme,
      body: within("es", demo("fogbank", 'coverage="chase" notes')),
    });
    await refined(page);
    await judged(page);
    const over = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.equal(await over(), 0);
    assert.deepEqual(await audit(page), []);
    if (width >= 600) return;
    await button(page, "Más").click();
    assert.equal(await over(), 0);
    assert.deepEqual(await audit(page), []);
  });
}

/** Has every message that a page in Spanish gets stand between brackets. */
async function bracketed(page) {
  await page.route("**/words-es-*.js*", (route) => {
    const url = new URL(route.request().url());
    if (url.search) return route.continue();
    const body = `import * as real from ${JSON.stringify(`${url.href}?real`)};
      const made = new Map();
      const wrap = (text) => "⟦" + text + "⟧";
      export const speak = real.speak;
      export const spanish = (tag) => {
        if (!made.has(tag)) made.set(tag, Object.fromEntries(Object.entries(real.spanish(tag)).map(
          ([name, it]) => [name, typeof it === "string" ? wrap(it) : (given) => wrap(it(given))],
        )));
        return made.get(tag);
      };`;
    return route.fulfill({ contentType: "text/javascript; charset=utf-8", body });
  });
}

/** Letters that people see or hear of the first set, that are neither from the catalogue nor from the set. */
function escaped(page) {
  return page.evaluate(() => {
    const told = [...globalThis.fromWasm]
      .filter((text) => /\p{L}/u.test(text))
      .sort((a, b) => b.length - a.length);
    const bare = (text) => {
      let rest = text.replace(/⟦[^⟦⟧]*(⟦[^⟦⟧]*⟧[^⟦⟧]*)*⟧/g, "");
      for (const part of told) rest = rest.replaceAll(part, "");
      return /\p{L}/u.test(rest) ? text : undefined;
    };
    const { shadowRoot } = document.querySelector("backcut-set");
    const texts = [];
    const walker = document.createTreeWalker(
      shadowRoot,
      NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT,
    );
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      // What is marked as English is meant to be.
      if (node.parentElement?.closest("[lang=en]")) continue;
      // A letter on a key is the key's name.
      if (node instanceof Text)
        texts.push(node.parentElement?.localName === "kbd" && node.length === 1 ? "" : node.data);
      else {
        for (const name of [
          "aria-label",
          "aria-valuetext",
          "aria-description",
          "title",
          "alt",
          "placeholder",
          "data-word",
        ]) {
          texts.push(node.getAttribute(name) ?? "");
        }
      }
    }
    return texts.map(bare).filter(Boolean);
  });
}

test("no word of the page escapes the catalogue", async (t) => {
  const { page } = await open(t, { body: "", wait: false });
  await bracketed(page);
  await page.addInitScript(() => {
    globalThis.fromWasm = new Set();
    const { decode } = TextDecoder.prototype;
    TextDecoder.prototype.decode = function (...given) {
      const text = decode.apply(this, given);
      globalThis.fromWasm.add(text);
      return text;
    };
  });
  await page.reload();
  const reach = async (width, body) => {
    await page.setViewportSize({ width, height: 1000 });
    await page.evaluate(
      (markup) => {
        document.querySelector("main").innerHTML = markup;
        return document.querySelector("backcut-set").ready.catch(() => {});
      },
      within("es", body),
    );
  };
  for (const width of [820, 390]) {
    await reach(width, demo("fogbank", 'coverage="chase" notes'));
    await refined(page);
    await judged(page);
    await page.waitForFunction(() => document.querySelector("backcut-set").looks);
    assert.deepEqual(await escaped(page), []);
    const { length } = await page.evaluate(() => {
      // Whatever can be pressed, opened or chosen is.
      const { shadowRoot } = document.querySelector("backcut-set");
      const buttons = [...shadowRoot.querySelectorAll("button:not(dialog button), summary")];
      for (const one of buttons) if (!one.textContent.includes("Pantalla")) one.click();
      return buttons;
    });
    assert.ok(length > 20, `${length} things to press`);
    await page.waitForFunction(() =>
      document.querySelector("backcut-set").shadowRoot.querySelector(".ways"),
    );
    await page.waitForFunction(() =>
      document.querySelector("backcut-set").shadowRoot.querySelector("dialog dt"),
    );
    assert.deepEqual(await escaped(page), []);
    await page.keyboard.press("Escape");
    // What copying says where it may, and where it may not.
    for (const way of await page.locator(".ways button").all()) {
      if (await way.isVisible()) await way.click();
      assert.deepEqual(await escaped(page), []);
    }
  }
  // What teaches, each mode by its button.
  await reach(820, demo("turnstile"));
  await refined(page);
  const openers = page.locator(".teach button[aria-pressed]");
  const modes = await openers.filter({ hasNotText: "Tramos lentos" }).all();
  assert.ok(modes.length > 0);
  for (const mode of modes) {
    await mode.click();
    await page.locator(".teaching > :not([hidden], [role=alert])").first().waitFor();
    assert.deepEqual(await escaped(page), []);
    // One of them hides the buttons while it is on.
    await mode.evaluate((opener) => opener.click());
  }
  for (const src of ["/no.json", "/wrong.json", ""]) {
    await reach(390, `<backcut-set src="${src}"></backcut-set>`);
    await page.getByRole("alert").getByText("no se puede mostrar").waitFor();
    assert.deepEqual(await escaped(page), []);
  }
});
