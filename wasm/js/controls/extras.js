/** The controls that come after the first picture: whom to follow, judging the set, teaching it, sharing it, the list of keys. */

import { make } from "../build.js";
import { Follow } from "./follow.js";
import { Judge } from "./judge.js";
import { Keys } from "./keys.js";
import { Pace } from "./pace.js";
import { Share } from "./share.js";
import { Teach } from "./teach.js";
import { WhatIf } from "./whatif.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { OpenSet } from "../load.js" */
/** @import { Commands, State } from "../reader.js" */

export class Extras {
  #pace;
  #follow;
  #judge;
  #share;
  #teach;
  #whatIf;
  /** What it adds, by where it stands: in the rows of a wide and of a narrow reader, by the title, as a row of its own, below. */
  nodes;

  /** @param {BackcutSet} host @param {Commands} ask */
  constructor(host, ask) {
    this.#pace = new Pace(ask);
    this.#follow = new Follow(ask);
    this.#judge = new Judge(host, ask);
    this.#share = new Share(host, ask);
    this.#teach = new Teach(host, ask);
    this.#whatIf = new WhatIf(host, ask);
    const keys = new Keys(host, ask);
    const { wide, narrow, words, below } = this.#judge.nodes;
    this.#teach.nodes.row.prepend(...this.#whatIf.nodes.wide);
    this.nodes = {
      wide: [this.#follow.nodes.wide, ...wide, this.#share.wide, keys.wide],
      narrow: [this.#pace.node, this.#follow.nodes.narrow, ...narrow],
      words: [
        ...words,
        ...this.#whatIf.nodes.narrow,
        ...this.#teach.nodes.words,
        this.#share.narrow,
        keys.narrow,
      ],
      row: this.#teach.nodes.row,
      below: make("div", {}, this.#teach.nodes.panels, this.#share.node, below, keys.node),
    };
  }

  /** Another set, another verdict on it, or none: what was asked of it before is asked anew. @param {OpenSet | undefined} play */
  take(play) {
    const full = play && "coverages" in play ? play : undefined;
    this.#judge.take(full);
    this.#share.take(full);
    this.#teach.take(full);
    this.#whatIf.take(play);
  }

  /** Another takes its place. */
  end() {
    this.#teach.end();
  }

  /** @param {State} state */
  update(state) {
    this.#pace.update(state);
    this.#follow.update(state);
    this.#judge.update(state);
    this.#share.instant(state);
    this.#teach.update(state);
    this.#whatIf.update();
  }

  /** Brings what depends on the time up to date. @param {State} state */
  instant(state) {
    this.#judge.instant(state);
    this.#share.instant(state);
    this.#teach.instant(state);
  }
}
