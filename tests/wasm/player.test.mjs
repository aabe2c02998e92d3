// The state machine, without a page.

import assert from "node:assert/strict";
import { test } from "node:test";
import { Player } from "../../wasm/js/player.js";

/** A player of a ten second set with beats at 0, 4 and 7, and what it told. */
function playing(open = true) {
  const told = [];
  const player = new Player((name) => told.push(name));
  if (open) {
    player.open(10, [0, 4, 7]);
    told.length = 0;
  }
  return { player, told };
}

test("before a set is there it has no duration and does not move", () => {
  const { player, told } = playing(false);
  player.advance(1);
  assert.ok(Number.isNaN(player.duration));
  assert.equal(player.time, 0);
  assert.equal(player.ended, false);
  assert.deepEqual(told, []);
});

test("play before the set is there is remembered", async () => {
  const { player, told } = playing(false);
  const started = player.play();
  assert.equal(player.paused, false);
  player.advance(1);
  player.open(10, [0]);
  await started;
  assert.deepEqual([player.paused, player.time], [false, 0]);
  assert.deepEqual(told, ["play", "loadedmetadata"]);
});

test("pause before the set is there takes play back", async () => {
  const { player } = playing(false);
  const started = player.play();
  player.pause();
  await assert.rejects(started, { name: "AbortError" });
  player.open(10, [0]);
  assert.equal(player.paused, true);
});

test("a set that never comes rejects play with its reason", async () => {
  const { player } = playing(false);
  const started = player.play();
  player.close(new Error("line 3"));
  await assert.rejects(started, /line 3/);
});

test("a seek before the set is there is kept, within the set", () => {
  const { player } = playing(false);
  player.seek(25);
  player.open(10, [0]);
  assert.equal(player.time, 10);
});

test("time passes at the rate, and only while it plays", () => {
  const { player } = playing();
  player.advance(1);
  assert.equal(player.time, 0);
  player.play();
  player.rate = 0.5;
  player.advance(1);
  assert.equal(player.time, 0.5);
});

test("the end is told in order: time, pause, ended", () => {
  const { player, told } = playing();
  player.play();
  player.seek(9.9);
  told.length = 0;
  player.advance(0.2);
  assert.deepEqual(told, ["timeupdate", "pause", "ended"]);
  assert.equal(player.time, 10);
  assert.equal(player.ended, true);
});

test("play at the end begins again", () => {
  const { player } = playing();
  player.seek(10);
  player.play();
  assert.equal(player.time, 0);
  assert.equal(player.paused, false);
});

test("a loop goes round without a gap", () => {
  const { player } = playing();
  player.loop = true;
  player.play();
  player.seek(9.75);
  player.advance(0.5);
  assert.equal(player.time, 0.25);
  assert.equal(player.paused, false);
});

test("updates of time are no denser than ten a second", () => {
  const { player, told } = playing();
  player.play();
  told.length = 0;
  for (let i = 0; i < 64; i += 1) player.advance(1 / 64);
  const updates = told.filter((name) => name === "timeupdate").length;
  assert.ok(updates >= 4 && updates <= 10, `${updates}`);
});

test("a seek outside the set lands at its nearer end", () => {
  const { player } = playing();
  player.seek(-3);
  assert.equal(player.time, 0);
  player.seek(Infinity - Infinity || 99);
  assert.equal(player.time, 10);
  assert.throws(() => player.seek(NaN), TypeError);
});

test("a speed that is none is refused", () => {
  const { player } = playing();
  for (const rate of [NaN, Infinity]) assert.throws(() => (player.rate = rate), TypeError);
  assert.throws(() => (player.rate = -1), { name: "NotSupportedError" });
  assert.equal(player.rate, 1);
});

test("at no speed it plays and stands", () => {
  const { player } = playing();
  player.rate = 0;
  player.play();
  player.advance(1);
  assert.equal(player.paused, false);
  assert.equal(player.time, 0);
});

test("forward goes to the next beat, after the last to the end", () => {
  const { player } = playing();
  const times = [0, 1, 2, 3].map(() => {
    player.step(1);
    return player.time;
  });
  assert.deepEqual(times, [4, 7, 10, 10]);
});

test("backward goes to this beat's start, and from there to the one before", () => {
  const { player } = playing();
  player.seek(6);
  const times = [0, 1, 2].map(() => {
    player.step(-1);
    return player.time;
  });
  assert.deepEqual(times, [4, 0, 0]);
});

test("stepwise it opens on the last picture of beat one and cuts from beat to beat", () => {
  const { player } = playing(false);
  player.stepwise = true;
  player.open(10, [0, 4, 7]);
  const pictures = [player.time];
  for (let i = 0; i < 3; i += 1) {
    player.play();
    pictures.push(player.time);
  }
  assert.deepEqual(pictures, [3.999, 6.999, 10, 3.999]);
  assert.equal(player.paused, true);
});

test("what leads tells the time while it plays, else the own clock goes on", () => {
  const { player, told } = playing();
  let film = 2;
  player.lead = () => film;
  player.advance(1);
  assert.equal(player.time, 0, "it stands until it is played");
  player.play();
  player.advance(1);
  assert.equal(player.time, 2);
  player.advance(1);
  assert.equal(player.time, 2, "it waits for what leads");
  film = undefined;
  player.advance(0.5);
  assert.equal(player.time, 2.5);
  film = 10;
  player.advance(0.1);
  assert.deepEqual([player.ended, told.at(-1)], [true, "ended"]);
});
