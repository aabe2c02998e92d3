/** What stands in place of a set that cannot be shown. */

import { make } from "../build.js";

/** @import { Fault } from "../fault.js" */

export class FaultNote {
  node = make("div", { class: "fault", role: "alert" });

  /**
   * @param {string} first the first thing that is wrong
   * @param {number} more how many more there are
   * @param {string} address of the set file, or nothing; a link is no file that could be looked into
   */
  show(first, more, address) {
    const file = address && !address.includes("#");
    this.node.replaceChildren(
      make("h3", {}, "This set cannot be shown"),
      make("p", {}, first),
      ...(more > 0 ? [make("p", { class: "more" }, `${more} more`)] : []),
      ...(file ? [make("p", {}, make("a", { href: address }, "Open the set file"))] : []),
    );
  }
}
