/**
 * Makes elements. Attributes only, no style attribute and no markup text: a strict content security
 * policy allows neither.
 */

/**
 * @template {keyof HTMLElementTagNameMap} Tag
 * @param {Tag} tag
 * @param {Record<string, string>} [attributes]
 * @param {...(Node | string)} children
 * @returns {HTMLElementTagNameMap[Tag]}
 */
export function make(tag, attributes = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children);
  return element;
}

/**
 * A button that does `act`.
 *
 * @param {Record<string, string>} attributes
 * @param {(event: MouseEvent) => void} act
 * @param {...(Node | string)} children
 */
export function button(attributes, act, ...children) {
  const element = make("button", { type: "button", ...attributes }, ...children);
  element.addEventListener("click", act);
  return element;
}

const SVG = "http://www.w3.org/2000/svg";

/**
 * A small drawing in the colour of the words around it.
 *
 * @param {string} box its view box
 * @param {string} path
 * @param {string} className
 */
export function glyph(box, path, className) {
  const svg = document.createElementNS(SVG, "svg");
  const shape = document.createElementNS(SVG, "path");
  svg.setAttribute("viewBox", box);
  svg.setAttribute("class", className);
  svg.setAttribute("aria-hidden", "true");
  shape.setAttribute("d", path);
  svg.append(shape);
  return svg;
}

/** Writes a text, if it is another one. @param {Node} node @param {string} text */
export function write(node, text) {
  if (node.textContent !== text) node.textContent = text;
}
