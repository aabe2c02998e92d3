/**
 * Defines `<backcut-set>`. Importing this anywhere but in a page does nothing.
 */

import { BackcutSet } from "./element.js";
import { TAG } from "./names.js";

if (typeof customElements !== "undefined") {
  if (customElements.get(TAG)) {
    console.warn(`<${TAG}> is defined already; the first definition stays.`);
  } else {
    customElements.define(TAG, BackcutSet);
  }
}

export { BackcutSet };
export { SetError } from "./fault.js";
