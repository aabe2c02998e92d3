/** What stands in place of a set that cannot be shown. */

import { make } from "../build.js";

/** @import { Say } from "../../pkg/words/say.js" */

export class FaultNote {
  #say;
  node = make("div", { class: "fault", role: "alert" });

  /** @param {Say} say */
  constructor(say) {
    this.#say = say;
  }

  /**
   * @param {string} first the first thing that is wrong
   * @param {number} more how many more there are
   * @param {string} address of the set file, or nothing; a link is no file that could be looked into
   */
  show(first, more, address) {
    const say = this.#say;
    const file = address && !address.includes("#");
    this.node.replaceChildren(
      make("h3", {}, say.noSet),
      make("p", {}, first),
      ...(more > 0 ? [make("p", { class: "more" }, say.moreFaults({ count: more }))] : []),
      ...(file ? [make("p", {}, make("a", { href: address }, say.openFile))] : []),
    );
  }
}
