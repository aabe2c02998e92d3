// Writes custom-elements.json, by which editors and catalogues know an element: the Custom Elements
// Manifest, https://github.com/webcomponents/custom-elements-manifest, schema 2.1.0. All of it comes
// from the sources' own comments; a name without one ends the build.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "./process.mjs";

/** What the browser calls, not a page. */
const LIFE = /^(constructor|(connected|disconnected|connectedMove|attributeChanged)Callback)$/;

const read = (...path) => readFileSync(join(root, "wasm", ...path), "utf8");

/** A comment in one line, without its tags. */
const told = (comment) =>
  comment
    .replace(/\s*\n\s*\*? ?/g, " ")
    .replace(/\s*@.*$/s, "")
    .trim();

/** What is said of `name`, or an end of the build. */
function said(name, comment) {
  const description = told(comment ?? "");
  if (!description) throw new Error(`no comment says what "${name}" is`);
  return description;
}

/** The names of a table in names.js, with what is said of each. */
function table(text, name) {
  const body = new RegExp(`const ${name}: \\{(.*?)\\n\\};`, "s").exec(text)?.[1] ?? "";
  const rows = body.matchAll(/(?:\/\*\*((?:(?!\*\/).)*)\*\/\s*)?readonly "?[\w-]+"?: "([\w-]+)"/gs);
  return [...rows].map(([, comment, key]) => ({ name: key, description: said(key, comment) }));
}

/** Fields and methods from the types that the compiler wrote. */
function members(text) {
  const found = new Map();
  const body = /class BackcutSet.*?\{(.*?)\n\}/s.exec(text)?.[1] ?? "";
  const each =
    /(?:\/\*\*((?:(?!\*\/).)*)\*\/\s*)?\n {4}(get |set )?(\w+)\(([^)]*)\)(?:: ([^\n]+))?;/gs;
  for (const [, comment, accessor, name, , type] of body.matchAll(each)) {
    if (LIFE.test(name)) continue;
    if (accessor === "set ") delete found.get(name)?.readonly;
    else if (accessor) {
      const description = said(name, comment);
      found.set(name, { kind: "field", name, type: { text: type }, description, readonly: true });
    } else {
      const description = said(name, comment);
      found.set(name, { kind: "method", name, return: { type: { text: type } }, description });
    }
  }
  return [...found.values()];
}

/** Attributes from the tags of the class's comment. */
function attributes(text, fields) {
  const tags = text.matchAll(/@attr \{(\w+)\} ([\w-]+) - (.*)/g);
  return [...tags].map(([, type, name, description]) => ({
    name,
    type: { text: type },
    description,
    ...(fields.some((f) => f.name === name && !f.readonly) && { fieldName: name }),
  }));
}

/** Custom properties from the tables of colours and faces; the light value is the usual one. */
function properties(text) {
  const rows = text.matchAll(/\/\*\* (.*) \*\/\s*\[\s*"([\w-]+)",\s*(?:"([^"]+)"|'([^']+)')/g);
  return [...rows].map(([, comment, name, double, single]) => ({
    name: `--backcut-${name}`,
    default: double ?? single,
    description: said(name, comment),
  }));
}

/** Custom properties that are no colour and no face, from the tags of the class's comment. */
function measures(text) {
  const tags = text.matchAll(/@cssprop \{\w+\} ([\w-]+) - \[(.*?)\] (.*)/g);
  return [...tags].map(([, name, usual, description]) => ({ name, default: usual, description }));
}

/** The manifest as text; the types must have been made. */
export function customElements() {
  const names = read("pkg", "types", "names.d.ts");
  const element = read("pkg", "types", "element.d.ts");
  const tagName = /const TAG = "(.*?)"/.exec(names)?.[1];
  const [, comment] = /\/\*\*((?:(?!\*\/).)*)\*\/\s*export declare class/s.exec(element) ?? [];
  const reflected = attributes(element, []).map(({ name, type, description }) => {
    return { kind: "field", name, type, description };
  });
  const fields = [...reflected, ...members(element)];
  const declaration = {
    kind: "class",
    name: "BackcutSet",
    description: said("BackcutSet", comment),
    customElement: true,
    tagName,
    superclass: { name: "HTMLElement" },
    attributes: attributes(element, fields),
    members: fields,
    events: table(names, "EVENT").map((event) => ({
      ...event,
      type: { text: event.name === "error" ? "CustomEvent" : "Event" },
    })),
    slots: [
      { name: "", description: said("slot", /@slot - ([^@]*?)\n \*(?: @|\/)/.exec(element)?.[1]) },
    ],
    cssParts: table(names, "PART"),
    cssProperties: [...properties(read("js", "palette.js")), ...measures(element)],
  };
  const here = { name: declaration.name, module: "backcut.js" };
  const module = {
    kind: "javascript-module",
    path: "backcut.js",
    declarations: [declaration],
    exports: [
      { kind: "js", name: declaration.name, declaration: here },
      { kind: "custom-element-definition", name: tagName, declaration: here },
    ],
  };
  return `${JSON.stringify({ schemaVersion: "2.1.0", modules: [module] }, null, 2)}\n`;
}
