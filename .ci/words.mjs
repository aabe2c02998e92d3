// Makes modules of the message catalogues in wasm/js/locales (Project Fluent):
//
//     wasm/pkg/words/first.js, late.js, sharing.js, teaching.js
//         English, to each published module the messages that it is the first to ask for
//     wasm/pkg/words/es.js
//         all of Spanish
//
// A source asks for the message `beat-of` as `say.beatOf({ beat, beats })`. Whatever could make a
// reader see no words, or words of another language, ends the build: a message that a language
// lacks, or has with other variables; one that nobody asks for, or that is not there.

import { mkdirSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "./process.mjs";

const sources = join(root, "wasm", "js");
const out = join(root, "wasm", "pkg", "words");

/** Published modules with words, in the order in which they come; each has what those before it have. */
const MODULES = ["first", "late", "sharing", "teaching"];
const ENTRIES = {
  first: "index.js",
  late: "late.js",
  sharing: "sharing.js",
  teaching: "teaching.js",
};

/** What a plural rule may answer (Unicode CLDR). */
const CATEGORIES = new Set(["zero", "one", "two", "few", "many", "other"]);

/** A message that a source asks for; not a file of that name. */
const ASKED = /(?<![\w/])say\.(\w+)/g;

/** What is wrong with a catalogue, as one line for each. */
class Wrong extends Error {}

const camel = (id) => id.replace(/-(.)/g, (_, letter) => letter.toUpperCase());

/** The catalogue's messages by the name that sources have for them. */
function catalogue({ parse }, text, file) {
  const messages = new Map();
  for (const entry of parse(text, { withSpans: false }).body) {
    if (entry.type === "Junk") {
      throw new Wrong(`${file}: ${entry.annotations[0]?.message}: ${entry.content.trim()}`);
    }
    if (entry.type !== "Message") continue;
    const name = camel(entry.id.name);
    if (messages.has(name)) throw new Wrong(`${file}: ${entry.id.name} is there twice`);
    if (!entry.value) throw new Wrong(`${file}: ${entry.id.name} says nothing`);
    const variables = new Map();
    const code = pattern(entry.value, variables);
    messages.set(name, { code, variables });
  }
  return messages;
}

/** Code for a pattern: the text itself where nothing is put in. Fills `variables` with their types. */
function pattern({ elements }, variables) {
  const parts = elements.map((element) =>
    element.type === "TextElement" ? element.value : inline(element.expression, variables),
  );
  if (parts.every((part) => typeof part === "string")) return JSON.stringify(parts.join(""));
  const escaped = (text) => text.replace(/[\\`$]/g, "\\$&");
  return `\`${parts.map((p) => (typeof p === "string" ? escaped(p) : `\${${p.code}}`)).join("")}\``;
}

/** What an expression puts in: a text, or `{ code }`. */
function inline(expression, variables) {
  switch (expression.type) {
    case "StringLiteral":
      return expression.parse().value;
    case "NumberLiteral":
      return expression.value;
    case "VariableReference": {
      const { name } = expression.id;
      if (!variables.has(name)) variables.set(name, "string | number");
      return { code: name };
    }
    case "FunctionReference": {
      const { name, digits } = decimals(expression);
      variables.set(name, "number");
      return { code: `number(${name}, ${digits})` };
    }
    case "SelectExpression":
      return { code: selected(expression, variables) };
    default:
      throw new Wrong(`${expression.type} is not known here`);
  }
}

/** The variable and its decimals in `NUMBER($x, minimumFractionDigits: 1, maximumFractionDigits: 1)`. */
function decimals({ id, arguments: { positional, named } }) {
  const options = Object.fromEntries(named.map(({ name, value }) => [name.name, value.value]));
  const digits = options.minimumFractionDigits;
  const [of] = positional;
  if (id.name !== "NUMBER" || of?.type !== "VariableReference" || positional.length !== 1) {
    throw new Wrong(`only NUMBER of a variable is known here`);
  }
  if (digits === undefined || digits !== options.maximumFractionDigits || named.length !== 2) {
    throw new Wrong("a number has as many digits at least as at most");
  }
  return { name: of.id.name, digits };
}

/** By number, by plural category, or by one of the texts that may be given. */
function selected({ selector, variants }, variables) {
  const written = selector.type === "FunctionReference";
  if (!written && selector.type !== "VariableReference") {
    throw new Wrong("only a variable or its NUMBER selects here");
  }
  const { name, digits } = written ? decimals(selector) : { name: selector.id.name, digits: 0 };
  const other = variants.find((variant) => variant.default);
  const keys = variants.map(({ key }) => key.name);
  const counts = keys.every((key) => key === undefined || CATEGORIES.has(key));
  variables.set(name, counts ? "number" : keys.map((key) => JSON.stringify(key)).join(" | "));
  const subject = counts ? `plural(${name}, ${digits})` : name;
  const cases = variants
    .filter((variant) => variant !== other)
    .map(({ key, value }) => {
      const is = key.name
        ? `${subject} === ${JSON.stringify(key.name)}`
        : `${name} === ${key.value}`;
      return `${is} ? ${pattern(value, variables)} : `;
    });
  return `${cases.join("")}${pattern(other.value, variables)}`;
}

/** The messages that the sources behind an entry ask for. */
function asked(entry) {
  const seen = new Set();
  const names = new Set();
  const look = (file) => {
    if (seen.has(file)) return;
    seen.add(file);
    const text = readFileSync(file, "utf8");
    for (const [, name] of text.matchAll(ASKED)) names.add(name);
    for (const [, path] of text.matchAll(/^(?:import|export)\b[^;]*?from "(\.[^"]+)";/gm)) {
      const next = join(dirname(file), path);
      if (!relative(sources, next).startsWith("..")) look(next);
    }
  };
  look(join(sources, entry));
  return { seen, names };
}

/** A module with a table of messages, made for a way to write numbers and to tell plurals. */
function table(name, messages, names) {
  const rows = [...names].map((id) => {
    const { code, variables } = messages.get(id);
    return `  ${id}: ${variables.size > 0 ? `({ ${[...variables.keys()].join(", ")} }) => ` : ""}${code},`;
  });
  const given = rows.some((row) => row.includes("plural(")) ? "number, plural" : "number";
  return `export const ${name} = (${given}) => ({\n${rows.join("\n")}\n});\n`;
}

/** What a source may ask for, as types. */
function types(messages) {
  const rows = [...messages].map(([id, { variables }]) => {
    if (variables.size === 0) return `  ${id}: string;`;
    const given = [...variables].map(([variable, type]) => `${variable}: ${type}`);
    return `  ${id}(given: { ${given.join(", ")} }): string;`;
  });
  return `/** All words of the element. */
export interface Say {
${rows.join("\n")}
}

/** A table of words, made for a way to write numbers and to tell plurals, both with so many decimals. */
export type Words = (
  number: (value: number, digits: number) => string,
  plural: (value: number, digits: number) => string,
) => Partial<Say>;
`;
}

const typed = (name, type) =>
  `import type { Say, Words } from "./say.js";\nexport declare const ${name}: ${type};\n`;

/** What differs between a language and English. */
function differences(language, messages, english) {
  const wrong = [];
  for (const [name, { variables }] of english) {
    const other = messages.get(name);
    const told = (map) => [...map].sort().join("; ").replaceAll(",", ": ");
    if (!other) wrong.push(`${language} lacks ${name}`);
    else if (told(other.variables) !== told(variables)) {
      wrong.push(
        `${language} has ${name} of { ${told(other.variables)} }, not of { ${told(variables)} }`,
      );
    }
  }
  for (const name of messages.keys()) {
    if (!english.has(name)) wrong.push(`${language} has ${name}, which English lacks`);
  }
  return wrong;
}

/**
 * The files by name, from the catalogues by language and, for each published module, what it asks
 * for. Throws where something is wrong.
 */
export async function compiled(catalogues, uses) {
  const fluent = await import("@fluent/syntax");
  const [english, ...others] = Object.entries(catalogues).map(([language, text]) => {
    return { language, messages: catalogue(fluent, text, `${language}.ftl`) };
  });
  const wrong = others.flatMap(({ language, messages }) =>
    differences(language, messages, english.messages),
  );
  const there = new Set();
  const modules = new Map();
  for (const [name, names] of Object.entries(uses)) {
    const own = [...names].filter((id) => !there.has(id));
    for (const id of own) {
      there.add(id);
      if (!english.messages.has(id)) wrong.push(`${name} asks for ${id}, which is in no catalogue`);
    }
    if (wrong.length > 0) continue;
    modules.set(`${name}.js`, table(name, english.messages, own));
    modules.set(`${name}.d.ts`, typed(name, "Words"));
  }
  for (const name of english.messages.keys()) {
    if (!there.has(name)) wrong.push(`nobody asks for ${name}`);
  }
  if (wrong.length > 0) throw new Wrong(wrong.join("\n"));
  for (const { language, messages } of others) {
    modules.set(`${language}.js`, table(language, messages, messages.keys()));
    modules.set(`${language}.d.ts`, typed(language, "(...given: Parameters<Words>) => Say"));
  }
  modules.set("say.d.ts", types(english.messages));
  return modules;
}

/** Makes wasm/pkg/words. */
export async function words() {
  const read = (language) => readFileSync(join(sources, "locales", `${language}.ftl`), "utf8");
  const found = MODULES.map((name) => [name, asked(ENTRIES[name])]);
  const seen = new Set(found.flatMap(([, { seen }]) => [...seen]));
  const uses = Object.fromEntries(found.map(([name, { names }]) => [name, names]));
  for (const file of readdirSync(sources, { recursive: true })) {
    const text =
      file.endsWith(".js") && !seen.has(join(sources, file))
        ? readFileSync(join(sources, file), "utf8")
        : "";
    if (text.search(ASKED) >= 0) throw new Wrong(`${file} has words, but is in no module that has`);
  }
  const modules = await compiled({ en: read("en"), es: read("es") }, uses);
  mkdirSync(out, { recursive: true });
  for (const [name, text] of modules) writeFileSync(join(out, name), text);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  try {
    await words();
  } catch (error) {
    if (!(error instanceof Wrong)) throw error;
    console.error(error.message);
    process.exit(1);
  }
}
