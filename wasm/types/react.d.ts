// `import "backcut/react"` once, and React's JSX knows the tag.

import type { DetailedHTMLProps, HTMLAttributes } from "react";
import type { BackcutSet } from "./element.js";
import type { BackcutSetAttributes } from "./jsx.js";

declare module "react" {
  namespace JSX {
    interface IntrinsicElements {
      "backcut-set": DetailedHTMLProps<HTMLAttributes<BackcutSet>, BackcutSet> & BackcutSetAttributes;
    }
  }
}
