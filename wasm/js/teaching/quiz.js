/** A quiz: one question at a time on the set that is shown, five a round. */

import { Aim } from "./quiz/aim.js";
import { Best } from "./quiz/best.js";
import { Branch } from "./quiz/branch.js";
import { Panel } from "./quiz/panel.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay } from "../load.js" */
/** @import { Commands } from "../reader.js" */

/**
 * A question as the module tells it.
 *
 * @typedef {object} Question
 * @property {"place" | "instant" | "choice"} kind
 * @property {number} t when it stands, or from when it plays, seconds
 * @property {number} told by when its answer has been seen
 * @property {string} text
 * @property {string} standing who stands where
 * @property {string[]} choices
 */

/**
 * What an answer is worth.
 *
 * @typedef {object} Result
 * @property {number} points 0 to 100
 * @property {string} reason
 * @property {number} [choice] the right one
 * @property {number} [t] the right instant, seconds
 * @property {string} [read] the line that shows it, where that is another one
 */

/** Questions a round. */
const ROUND = 5;
/** Points that a question is worth. */
const MOST = 100;
const PLAYERS = [1, 2, 3, 4, 5];
/** Pictures nearer to each other than this show the same, seconds. */
const APART = 0.4;
/** These keys go on to mean what they always do. */
const PASSES = ["Tab", "Escape", "f", "?"];

/** Whether nothing moves by itself. */
const isStill = () => matchMedia("(prefers-reduced-motion: reduce)").matches;

export class Quiz {
  #host;
  #ask;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  /** Ends what listens while it is on. */
  #on = /** @type {AbortController | undefined} */ (undefined);
  #coverage = "";
  /** Which round this is: the same questions come again for the same number. */
  #number = 0;
  /** Questions of this round, with the index the module has for each. @type {{ index: number, asked: Question }[]} */
  #round = [];
  #at = 0;
  /** @type {Result[]} */
  #results = [];
  /** Whether the set plays and waits for a press. */
  #waiting = false;
  /** What is asked of the next picture. */
  #watch = 0;
  /** Which picture of an answer is shown, where nothing moves by itself. */
  #picture = 0;
  #aim;
  #panel;
  #best = new Best();
  #branch;
  node;

  /** @param {BackcutSet} host @param {Commands} ask @param {() => void} leave ends it */
  constructor(host, ask, leave) {
    this.#host = host;
    this.#ask = ask;
    this.#branch = new Branch(host);
    const press = () => this.#press();
    this.#aim = new Aim(ask.say.court, (x, y) => this.#answerPlace(x, y), press);
    this.#panel = new Panel(ask.say, {
      start: () => this.#run(),
      press,
      choose: (choice) => this.#answerChoice(choice),
      seek: (t) => ask.seek(t),
      stop: () => this.#stop(),
      next: () => this.#advance(),
      again: () => this.#again(),
      another: () => this.#begin(),
      forget: () => this.#forget(),
      leave,
    });
    this.node = this.#panel.node;
    this.node.append(this.#aim.said);
  }

  /** @param {FullPlay | undefined} play another set or line, or none */
  take(play) {
    this.#play = play;
    this.#aim.play = play;
    if (!this.#on) return;
    if (!play) this.#branch.fail();
    else if (!this.#branch.awaited) this.#begin();
  }

  begin() {
    this.#on = new AbortController();
    const root = this.#host.shadowRoot;
    const large = root?.querySelector(".close-up[data-large]");
    if (large) this.#ask.large();
    root?.querySelector(".reader")?.toggleAttribute("data-quiz", true);
    root?.querySelector(".court")?.append(this.#aim.node);
    const onKey = (/** @type {Event} */ event) => {
      if (event instanceof KeyboardEvent) this.#onKey(event);
    };
    root?.addEventListener("keydown", onKey, { capture: true, signal: this.#on.signal });
    this.#begin();
  }

  end() {
    this.#on?.abort();
    this.#on = undefined;
    this.#rest();
    this.#branch.back(() => {});
    this.#aim.node.remove();
    this.#host.shadowRoot?.querySelector(".reader")?.toggleAttribute("data-quiz", false);
    this.#show(() => this.#play?.pose());
  }

  /** A defence that comes or goes makes other questions. */
  update() {
    if (this.#on && this.#host.coverage !== this.#coverage) this.#begin();
  }

  instant() {}

  // -- a round --------------------------------------------------------------------------------

  #begin() {
    if (this.#branch.back(() => this.#begin())) return;
    const play = this.#play;
    if (!play) return;
    this.#coverage = this.#host.coverage;
    this.#best.of(play);
    this.#number = this.#best.rounds + 1;
    this.#at = 0;
    this.#results = [];
    this.#round = [];
    this.#draw();
    if (this.#round.length > 0) this.#pose();
    else this.#stand(this.#ask.say.nothingToAsk, "", []);
  }

  /** Has the set that is open ask the questions of this round. */
  #draw() {
    this.#ask.attempt(() => {
      const all = /** @type {Question[] | undefined} */ (this.#play?.questions(this.#number)) ?? [];
      this.#round = all.map((asked, index) => ({ index, asked })).slice(0, ROUND);
    });
  }

  #pose() {
    const now = this.#round[this.#at];
    if (!now) return;
    const { asked, index } = now;
    this.#rest();
    this.#count();
    this.#panel.pose(asked, isStill());
    this.#show(() => this.#play?.pose(index), asked.t);
    this.#aim.show(asked.kind, asked.text);
  }

  #count() {
    this.#panel.count(this.#at, this.#round.length, this.#sum, this.#best.points);
  }

  get #sum() {
    return this.#results.reduce((sum, { points }) => sum + points, 0);
  }

  #advance() {
    this.#rest();
    const back = () => {
      this.#draw();
      this.#proceed();
    };
    if (!this.#branch.back(back)) this.#proceed();
  }

  #proceed() {
    this.#at += 1;
    if (this.#at < this.#round.length) return this.#pose();
    const { say } = this.#ask;
    const points = this.#sum;
    const better = this.#best.add(points);
    const { points: best } = this.#best;
    const kept = better ? say.bestYet : say.bestKept({ points: best ?? 0 });
    this.#stand(
      say.sumOf({ points, most: MOST * this.#round.length }),
      best === undefined ? say.notKept : kept,
      best === undefined ? ["another"] : ["another", "forget"],
    );
  }

  /** Nothing is asked. @param {string} large @param {string} kept @param {("another" | "forget")[]} acts */
  #stand(large, kept, acts) {
    this.#rest();
    this.#aim.rest();
    this.#show(() => this.#play?.pose());
    this.#panel.sum(large, this.#coverage ? "" : this.#ask.say.chooseDefence, kept, acts);
  }

  #forget() {
    this.#best.forget();
    const { say } = this.#ask;
    this.#stand(say.forgotten, "", ["another"]);
  }

  // -- answers --------------------------------------------------------------------------------

  /** The question that waits for an answer. */
  get #asked() {
    return this.#results.length === this.#at ? this.#round[this.#at]?.asked : undefined;
  }

  /** @param {number} x @param {number} y metres */
  #answerPlace(x, y) {
    if (this.#asked?.kind === "place") this.#answer((play, i) => play.answerPlace(i, x, y));
  }

  /** @param {number} choice */
  #answerChoice(choice) {
    if (this.#asked?.kind === "choice") this.#answer((play, i) => play.answerChoice(i, choice));
  }

  /** Answers with the instant that is shown. @param {number} [t] seconds; no number where nobody pressed */
  #press(t = this.#host.currentTime) {
    if (!this.#waiting) return;
    this.#rest();
    this.#answer((play, i) => play.answerInstant(i, t));
  }

  /** Answers with the instant that was looked for by hand. */
  #stop() {
    const t = this.#host.currentTime;
    if (this.#asked?.kind === "instant") this.#answer((play, i) => play.answerInstant(i, t));
  }

  /** @param {(play: FullPlay, index: number) => Result | undefined} answer */
  #answer(answer) {
    const now = this.#round[this.#at];
    const play = this.#play;
    if (!now || !play) return;
    this.#ask.attempt(() => {
      const result = answer(play, now.index);
      if (!result) return;
      this.#results.push(result);
      this.#aim.rest();
      this.#count();
      const { say } = this.#ask;
      const several = result.read !== undefined || result.t !== undefined;
      const again = isStill() ? several && say.nextPicture : say.seeAgain;
      const last = this.#at + 1 === this.#round.length;
      this.#panel.answer(now.asked, result, last, again || "");
      this.#picture = 0;
      this.#reveal();
    });
  }

  // -- the picture ----------------------------------------------------------------------------

  /** Has the set play until somebody presses. */
  #run() {
    const asked = this.#asked;
    if (!asked) return;
    this.#panel.wait();
    this.#waiting = true;
    this.#until(asked.told, () => this.#press(NaN));
  }

  /** Shows how it goes on; of a read, its own line. */
  #reveal() {
    const asked = this.#round[this.#at]?.asked;
    const result = this.#results[this.#at];
    if (!asked || !result || this.#branch.awaited) return;
    this.#rest();
    const { read } = result;
    if (read !== undefined && !this.#branch.on)
      return this.#branch.show(read, () => this.#reveal());
    if (isStill()) {
      const pictures = this.#pictures(asked, result);
      this.#ask.seek(pictures[this.#picture % pictures.length] ?? asked.told);
      return this.#tell();
    }
    const end = read === undefined ? asked.told : this.#host.duration;
    this.#ask.seek(asked.t);
    this.#tell();
    if (end > asked.t)
      this.#until(end, () => {
        this.#rest();
        // One that loops has begun again by then.
        if (this.#host.currentTime < asked.t) this.#ask.seek(end);
      });
  }

  /** Once more; or the next picture, where nothing moves by itself. */
  #again() {
    this.#picture += 1;
    this.#reveal();
  }

  /** The instants that show an answer, seconds: of a line, whenever somebody begins something. @param {Question} asked @param {Result} result */
  #pictures({ t, told }, { t: right, read }) {
    if (right !== undefined) return [right, told];
    if (read === undefined) return [told];
    const end = this.#host.duration;
    const begun = PLAYERS.flatMap((n) => this.#play?.card(n)?.steps ?? []).map((step) => step.t);
    /** @type {number[]} */
    const pictures = [];
    for (const at of begun.sort((a, b) => a - b)) {
      if (at > (pictures.at(-1) ?? t) + APART && at < end - APART) pictures.push(at);
    }
    return [...pictures, end];
  }

  /** Says what happens in the line of a read. */
  #tell() {
    const { beat } = this.#host;
    if (this.#branch.on) this.#panel.caption(this.#play?.caption(beat - 1) ?? "");
  }

  /** Plays up to `t` seconds, then does `act`. @param {number} t @param {() => void} act */
  #until(t, act) {
    let last = this.#host.currentTime;
    const look = () => {
      const { currentTime: now, ended } = this.#host;
      this.#tell();
      if (now >= t || now < last || ended) return act();
      last = now;
      this.#watch = this.#host.requestVideoFrameCallback(look);
    };
    this.#watch = this.#host.requestVideoFrameCallback(look);
    // Rejected where there is no set, which is said already.
    this.#host.play().catch(() => {});
  }

  /** Stands still, and waits for nothing. */
  #rest() {
    this.#waiting = false;
    this.#host.cancelVideoFrameCallback(this.#watch);
    this.#host.pause();
  }

  /** Changes what the court shows, and has it painted. @param {() => void} change @param {number} [t] seconds */
  #show(change, t = this.#host.currentTime) {
    this.#ask.attempt(change);
    this.#ask.seek(t);
  }

  /** The reader's keys would show what is asked for. @param {KeyboardEvent} event */
  #onKey(event) {
    // In another language the reader is made anew, without this.
    if (!this.node.isConnected) return this.end();
    const { key, target } = event;
    if (event.altKey || event.ctrlKey || event.metaKey || PASSES.includes(key)) return;
    if (!(target instanceof Element) || target.closest("dialog")) return;
    event.stopPropagation();
    const acts = key === " " || key === "Enter";
    // Who still holds the key that answered has not read the answer.
    if (acts && event.repeat) event.preventDefault();
    else if (this.#waiting && acts && this.#panel.takesPress(target)) {
      event.preventDefault();
      this.#press();
    } else if (target === this.#aim.node) this.#aim.onKey(event);
    else if (key === "Enter" && target.matches("input")) {
      // Else it would press the button that has the focus by then.
      event.preventDefault();
      this.#panel.choose();
    }
  }
}
