/** What stands in place of a set that cannot be shown. */

import { make } from "../build.js";

/** @import { SetError } from "../fault.js" */
/** @import { Say } from "../../pkg/words/say.js" */

export class FaultNote {
  #say;
  node = make("div", { class: "fault", role: "alert" });

  /** @param {Say} say */
  constructor(say) {
    this.#say = say;
  }

  /**
   * @param {SetError} error
   * @param {string} address of the set file, or nothing; a link is no file that could be looked into
   */
  show(error, address) {
    const { length } = error.faults;
    const more = length + error.more - 1;
    const say = this.#say;
    const file = address && !address.includes("#");
    this.node.replaceChildren(
      make("h3", {}, say.noSet),
      make("p", length > 0 ? { lang: "en" } : {}, error.told(say)),
      ...(more > 0 ? [make("p", { class: "others" }, say.moreFaults({ count: more }))] : []),
      ...(file ? [make("p", {}, make("a", { href: address }, say.openFile))] : []),
    );
  }
}
