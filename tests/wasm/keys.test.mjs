// The list of keys says what the keys do, and they do it.

import assert from "node:assert/strict";
import { test } from "node:test";
import { KEYS, MODE_KEYS, NO_CHARACTERS, actOf, onKey } from "../../wasm/js/keys.js";
import { late } from "../../wasm/pkg/words/late.js";
import { first } from "../../wasm/pkg/words/first.js";
import { listed } from "../../wasm/js/controls/keys.js";

const host = (keys = null) => ({ getAttribute: () => keys });
const say = { ...first(String), ...late(String) };

globalThis.HTMLElement ??= class {
  isContentEditable = false;
  matches = () => false;
};
globalThis.KeyboardEvent ??= class extends Event {
  constructor(key, more = {}) {
    super("keydown", { cancelable: true });
    Object.assign(this, { key, repeat: false, ...more });
  }
};

/** What a key asks for, pressed on nothing in particular. */
function asked(key, more, set = host()) {
  const calls = [];
  const ask = new Proxy({}, { get: (_, name) => (by) => calls.push([name, by]) });
  onKey(new KeyboardEvent(key, more), ask, set, new HTMLElement());
  return calls;
}

test("every key that acts is listed once, and nothing else", () => {
  const [own, ...modes] = listed(host(), say);
  const lists = [[own, KEYS], ...Object.values(MODE_KEYS).map((keys, i) => [modes[i], keys])];
  assert.equal(modes.length, Object.keys(MODE_KEYS).length);
  for (const [{ rows }, keys] of lists) {
    const caps = rows.flatMap(({ caps }) => caps.map((cap) => cap.join("+")));
    assert.equal(caps.length, Object.keys(keys).length);
    assert.equal(new Set(caps).size, caps.length);
    for (const { does } of rows) assert.notEqual(does, "");
  }
});

test("the modes' keys stand under the name of the mode", () => {
  const [own, ...modes] = listed(host(), say);
  assert.equal(own.title, undefined);
  const titles = modes.map(({ title }) => title);
  assert.deepEqual(titles, ["Walk-through", "Loop", "Quiz"]);
  assert.deepEqual(modes[0].rows, [
    { caps: [["Enter"]], does: "Go on" },
    { caps: [["Shift", "Enter"]], does: "Back" },
    { caps: [["Esc"]], does: "Leave" },
  ]);
});

test("keys that ask for the same stand together", () => {
  const [{ rows: all }] = listed(host(), say);
  const rows = new Map(all.map(({ caps, does }) => [does, caps.flat()]));
  assert.deepEqual(rows.get("Play or pause"), ["Space", "K"]);
  assert.deepEqual(rows.get("Follow that player too; again: no longer"), ["1", "2", "3", "4", "5"]);
  assert.deepEqual(rows.get("1 second back"), ["Left"]);
});

test("without characters the list has none", () => {
  const groups = listed(host(NO_CHARACTERS), say);
  const caps = groups.flatMap(({ rows }) => rows.flatMap(({ caps }) => caps.flat()));
  assert.ok(caps.includes("Space") && caps.includes("Left") && caps.includes("Enter"));
  assert.deepEqual(
    caps.filter((cap) => cap.length === 1),
    [],
  );
});

test("a key of another name than those of the tables asks for nothing", () => {
  for (const key of ["constructor", "toString", "__proto__", "q", ""]) {
    assert.deepEqual(asked(key), [], key);
    for (const mode of Object.keys(MODE_KEYS)) assert.equal(actOf(mode, key), undefined, key);
  }
  assert.equal(actOf("walk", undefined), undefined);
  assert.equal(actOf("loop", "s"), "start");
});

test("without characters none asks for anything", () => {
  assert.deepEqual(asked("c"), [["captions", 0]]);
  assert.deepEqual(asked("c", {}, host(NO_CHARACTERS)), []);
});

test("held down, what goes on goes on, and what turns something on does so once", () => {
  const held = { repeat: true };
  assert.deepEqual(asked(".", held), [["frame", 1]]);
  assert.deepEqual(asked("PageUp", held), [["beat", 1]]);
  for (const key of [" ", "k", "c", "f", "1", ">"]) {
    assert.equal(asked(key, held).length, 0, key);
  }
  const set = { ...host(), readyState: 4, currentTime: 3 };
  asked("ArrowRight", held, set);
  assert.equal(set.currentTime, 4);
});

test("faster and slower go to the nearest speed there is a button for", () => {
  const after = (key, playbackRate) => {
    const set = { ...host(), playbackRate };
    asked(key, {}, set);
    return set.playbackRate;
  };
  const slower = [0.25, 0.3, 0.5, 1, 4].map((rate) => after("<", rate));
  assert.deepEqual(slower, [0.25, 0.25, 0.25, 0.5, 1]);
  const faster = [0.1, 0.25, 0.3, 1, 4].map((rate) => after(">", rate));
  assert.deepEqual(faster, [0.25, 0.5, 0.5, 1, 4]);
});
