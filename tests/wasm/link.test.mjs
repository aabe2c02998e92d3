// Links in wasm: the same letters as natively, and old ones open for ever.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { before, test } from "node:test";
import * as first from "../../wasm/pkg/raw/backcut.js";
import { shownBy } from "../../wasm/js/shown.js";
import * as module from "../../wasm/pkg/full/backcut.js";

const { Play, initSync } = module;
/** Faults come in English. */
const openLink = (link) => module.openLink(link, "en");

const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = `${root}/tests/links/v1`;
const names = readdirSync(folder)
  .filter((name) => name.endsWith(".link"))
  .map((name) => name.slice(0, -".link".length));

/** What each of those links asks for; tests/reference/links.rs made them. */
const view = {
  from: 12.345,
  until: 14,
  beat: 3,
  read: [2, 1],
  follow: 0b01001,
  coverage: "weak-side-tag",
  speed: 0.25,
  paused: true,
};
const nothing = {
  from: undefined,
  until: undefined,
  beat: undefined,
  read: [],
  follow: 0,
  coverage: undefined,
  speed: undefined,
  paused: false,
};

const link = (name) => readFileSync(`${folder}/${name}.link`, "utf8").trim();

before(() => {
  initSync({ module: readFileSync(`${root}/wasm/pkg/full/backcut_bg.wasm`) });
});

for (const name of names) {
  test(`the link of ${name} opens in wasm and is made there letter by letter`, () => {
    const opened = openLink(`https://club.example/#${link(name)}`);
    assert.deepEqual(Buffer.from(opened.bytes), readFileSync(`${folder}/${name}.txt`));
    assert.deepEqual(opened.view, view);
    const play = Play.open(opened.bytes, undefined, undefined, false);
    assert.equal(play.link(opened.view), link(name));
    play.free();
  });
}

test("a view with nothing in it, or with nonsense, asks for nothing", () => {
  const { bytes } = openLink(link("tidepool"));
  const play = Play.open(bytes, undefined, undefined, false);
  const odd = { from: "soon", beat: -1, read: 7, follow: NaN, coverage: 3, speed: Infinity };
  for (const asked of [{}, undefined, null, odd]) {
    assert.deepEqual(openLink(play.link(asked)).view, nothing);
  }
  play.free();
});

test("a mirrored set is linked as it is shown", () => {
  const { bytes } = openLink(link("gangway"));
  const play = Play.open(bytes, undefined, undefined, true);
  const there = openLink(play.link({}));
  const back = Play.open(there.bytes, undefined, undefined, true);
  assert.notDeepEqual(there.bytes, bytes);
  assert.deepEqual(openLink(back.link({})).bytes, bytes);
});

test("the short link of an article is understood as the link with a set is", () => {
  const whole = link("turnstile").split("&")[0];
  const mask = (text = "") =>
    [...text.matchAll(/\d/g)].reduce((bits, [n]) => bits | (1 << (n - 1)), 0);
  for (const words of [
    "t=3.4",
    "t=3.4,6",
    "t=,6",
    "t=npt:1,2.5",
    "t=3600&beat=65535",
    "beat=2&follow=1,4",
    "coverage=weak-side-tag&paused",
    "speed=16&paused=true",
    "speed=0.25&paused=false",
    "own=1&t=2",
    "read=2.1",
  ]) {
    const { read, ...view } = openLink(`${whole}&${words}`).view;
    const shown = shownBy(words);
    assert.deepEqual(
      { ...shown, read: shown.read ?? "", follow: mask(shown.follow) },
      { ...view, read: read.join(".") },
      words,
    );
  }
  // Where one refuses the other asks for nothing.
  for (const words of [
    "t=3601",
    "t=Infinity",
    "t=soon",
    "t=6,3",
    "t=1e2",
    "beat=0",
    "speed=17",
    "speed=0",
    "read=0",
    "read=1.0",
    "read=first",
  ]) {
    assert.throws(() => openLink(`${whole}&${words}`), words);
    const { from, until, beat, read, speed } = shownBy(words);
    assert.deepEqual([from, until, beat, read, speed], Array(5).fill(undefined), words);
  }
});

test("damage is thrown as faults", () => {
  const whole = link("turnstile").split("&")[0];
  const code = (act) => {
    try {
      act();
    } catch (faults) {
      return faults.map((fault) => fault.code).join();
    }
    return "nothing thrown";
  };
  assert.equal(
    code(() => openLink(whole.slice(0, -1))),
    "link-damaged",
  );
  assert.equal(
    code(() => openLink("#turnstile&beat=3")),
    "no-link",
  );
  assert.equal(
    code(() => openLink(`${whole}&t=soon&beat=x`)),
    "link-view,link-view",
  );
});

test("the module of the first picture carries no links", () => {
  assert.equal(first.openLink, undefined);
  assert.equal(first.Play.prototype.link, undefined);
});
