// The tag for frameworks that check JSX. What it takes is what the element watches, so nothing is
// listed twice.

import type { ATTRIBUTE } from "./names.js";
import type { BackcutSet } from "./element.js";

type Names = (typeof ATTRIBUTE)[keyof typeof ATTRIBUTE];

/** Attributes of `<backcut-set>`: a flag is there or not, the others hold a text. */
export type BackcutSetAttributes = {
  [Name in Names]?: BackcutSet[Name] extends boolean ? boolean | "" : string;
};
