// The message catalogues: what the build refuses, and that the sources hold no words of their own.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { parse } from "acorn";
import { compiled } from "../../.ci/words.mjs";

const EN = `
play = Play
pause = Pause
left = { $count ->
    [0] none left
    [one] { $count } left
   *[other] { $count } are left
  }
long = { NUMBER($time, minimumFractionDigits: 1, maximumFractionDigits: 1) } seconds of { $title }
`;
const ES = `
play = Ver
pause = Pausa
left = { $count ->
    [0] no queda
    [one] queda { $count }
   *[other] quedan { $count }
  }
long = { $title }: { NUMBER($time, minimumFractionDigits: 1, maximumFractionDigits: 1) } segundos
`;
const USES = { first: ["play", "long"], late: ["play", "pause", "left"] };

const made = (changes = {}, uses = USES) => compiled({ en: EN, es: ES, ...changes }, uses);

/** A table from a module's text. */
async function table(text, name) {
  const module = await import(`data:text/javascript,${encodeURIComponent(text)}`);
  const rules = new Intl.PluralRules(name === "es" ? "es" : "en");
  return module[name](
    (value, digits) => value.toFixed(digits),
    (value) => rules.select(value),
  );
}

test("each module carries the English that it is the first to ask for, and Spanish is whole", async () => {
  const modules = await made();
  const [first, late, es] = await Promise.all(
    ["first", "late", "es"].map((name) => table(modules.get(`${name}.js`), name)),
  );
  assert.deepEqual(Object.keys(first), ["play", "long"]);
  assert.deepEqual(Object.keys(late), ["pause", "left"]);
  assert.deepEqual(Object.keys(es).sort(), ["left", "long", "pause", "play"]);
});

test("a message says what it is given, in the plural that its number asks for", async () => {
  const modules = await made();
  const first = await table(modules.get("first.js"), "first");
  const late = await table(modules.get("late.js"), "late");
  const es = await table(modules.get("es.js"), "es");
  assert.equal(first.long({ time: 4.25, title: "Fog" }), "4.3 seconds of Fog");
  assert.equal(es.long({ time: 4.25, title: "Fog" }), "Fog: 4.3 segundos");
  assert.deepEqual(
    [0, 1, 2].map((count) => late.left({ count })),
    ["none left", "1 left", "2 are left"],
  );
  assert.deepEqual(
    [0, 1, 2].map((count) => es.left({ count })),
    ["no queda", "queda 1", "quedan 2"],
  );
});

test("what is put in is text, whatever it holds", async () => {
  const en = 'quote = A ` and ${ x } and \\\\ in "{ $title }"\n'.replace("{ x }", "x");
  const modules = await compiled({ en, es: en }, { first: ["quote"] });
  const { quote } = await table(modules.get("first.js"), "first");
  assert.equal(quote({ title: "${1 + 1}`" }), 'A ` and $x and \\\\ in "${1 + 1}`"');
});

for (const [what, changes, uses, says] of [
  ["a message that Spanish lacks", { es: ES.replace("pause = Pausa", "") }, USES, /es lacks pause/],
  [
    "one that only Spanish has",
    { es: `${ES}more = Más\n` },
    USES,
    /es has more, which English lacks/,
  ],
  ["one with other variables", { es: ES.replace("$title", "$name") }, USES, /es has long of/],
  [
    "one that nobody asks for",
    {},
    { first: ["play", "long"], late: ["pause"] },
    /nobody asks for left/,
  ],
  ["one that is in no catalogue", {}, { ...USES, sharing: ["link"] }, /sharing asks for link/],
  ["one that is there twice", { en: `${EN}play = Again\n` }, USES, /play is there twice/],
  ["what cannot be read", { es: `${ES}broken = {\n` }, USES, /es\.ftl/],
  ["a function that is not known", { en: EN.replace("NUMBER", "DATETIME") }, USES, /NUMBER/],
]) {
  test(`the build ends at ${what}`, async () => {
    await assert.rejects(made(changes, uses), says);
  });
}

// -- the sources ------------------------------------------------------------------------------------

const js = new URL("../../wasm/js/", import.meta.url);

const sources = readdirSync(js, { recursive: true }).filter((name) => name.endsWith(".js"));
const read = (name) => readFileSync(new URL(name, js), "utf8");

/** Names that style sheets have for elements. */
const CLASSES = new Set(
  sources
    .filter((name) => name.endsWith("styles.js"))
    .flatMap((name) => [...read(name).matchAll(/\.([a-z][\w-]*)/g)].map(([, found]) => found)),
);

/** Calls and objects whose texts are for programs: names, selectors, drawings, what a programmer reads. */
const FOR_PROGRAMS =
  /^(glyph|shape|matchMedia|Error|TypeError|DOMException|.*\.(addEventListener|querySelector|querySelectorAll|matches|closest|warn))$/;

/** Attributes that name elements, and keys as events name them. */
const NAMES = ["class", "aria-describedby", "aria-labelledby"];
const KEYS = ["Tab", "Escape", "Enter", "Home", "End"];

/** Whether a text is made of words, which begin large, or of which there are several. */
function isProse(text) {
  if (KEYS.includes(text)) return false;
  if (text.trim().startsWith("<") || text.split(/\s+/).every((word) => CLASSES.has(word)))
    return false;
  return /^\s*\p{Lu}\p{Ll}+(\s|$)|\p{L}{2,} \p{L}+/u.test(text);
}

/** Names what is called. */
const named = ({ type, name, object, property }) =>
  type === "MemberExpression" ? `${named(object)}.${property.name}` : (name ?? "");

/** Whether what stands in `node` at `key` is for programs alone. */
function isForPrograms(node, key) {
  switch (node.type) {
    case "CallExpression":
    case "NewExpression":
      return FOR_PROGRAMS.test(named(node.callee));
    case "BinaryExpression":
      return node.operator !== "+";
    case "Property":
      return key === "key" || NAMES.includes(node.key.name ?? node.key.value);
    default:
      return key === "source" || node.type === "ImportExpression";
  }
}

/** The texts of a source that a person might read. */
function prose(text) {
  const found = [];
  const look = (node) => {
    if (node.type === "Literal" && typeof node.value === "string") found.push(node.value);
    if (node.type === "TemplateElement") found.push(node.value.cooked);
    for (const [key, child] of Object.entries(node)) {
      if (isForPrograms(node, key)) continue;
      for (const one of [child].flat()) if (typeof one?.type === "string") look(one);
    }
  };
  look(parse(text, { ecmaVersion: "latest", sourceType: "module" }));
  return found.filter(isProse);
}

test("a word in a source is found", () => {
  assert.deepEqual(prose('make("p", { class: "cell word more" }, "Close");'), ["Close"]);
  assert.deepEqual(prose("write(node, `beat ${n} of ${m}`);"), []);
  assert.deepEqual(prose("write(node, `The beat is ${n}.`);"), ["The beat is "]);
  assert.deepEqual(prose('button({ "aria-label": "the next beat" }, act);'), ["the next beat"]);
  assert.deepEqual(prose('throw new Error("The page does not carry it.");'), []);
});

test("no source of the element has words of its own", () => {
  const found = {};
  for (const file of sources) {
    // Style sheets, and faces and colours by name.
    if (/styles\.js$|palette\.js$/.test(file)) continue;
    const list = prose(read(file));
    if (list.length > 0) found[file] = list;
  }
  assert.deepEqual(found, {});
});
