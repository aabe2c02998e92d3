/** The language around an element. */

/** As its page tells it: the closest `lang`, through shadow hosts. @param {Element} element */
export function languageAround(element) {
  for (let around = element; around;) {
    const told = around.closest("[lang]");
    if (told) return told.getAttribute("lang") ?? "";
    around = /** @type {ShadowRoot} */ (around.getRootNode()).host;
  }
  return "";
}

/** Whether that is the one that there are words for beside English. @param {Element} element */
export const isInSpanish = (element) => /^es(-|$)/i.test(languageAround(element));
