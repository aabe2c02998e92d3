// `import "backcut/preact"` once, and Preact's JSX knows the tag.

import type { HTMLAttributes } from "preact";
import type { BackcutSet } from "./element.js";
import type { BackcutSetAttributes } from "./jsx.js";

declare module "preact" {
  namespace JSX {
    interface IntrinsicElements {
      "backcut-set": HTMLAttributes<BackcutSet> & BackcutSetAttributes;
    }
  }
}
