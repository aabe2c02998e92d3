/** What can be copied of a set on a page: links and what another page needs to show it. */

import { isInSpanish, languageAround } from "./around.js";
import { ATTRIBUTE, TAG } from "./names.js";
import { home } from "./source.js";

/** @import { BackcutSet } from "./element.js" */
/** @import { FullPlay } from "./load.js" */
/** @import { State } from "./reader.js" */
/** @import { Say } from "../pkg/words/say.js" */

/**
 * A set on a page.
 *
 * @typedef {object} OnPage
 * @property {BackcutSet} host
 * @property {FullPlay} play
 * @property {State} state
 * @property {number} panel height of what is there only for sharing, CSS pixels
 */

/** The speed of a game, of which nothing need be said. */
const GAME = 1;
/** So many characters make a picture that a phone reads from a screen. Common practice, no source. */
export const MOST_IN_PICTURE = 600;

/** Where links open; undefined where the package lies nowhere that others can reach. @param {BackcutSet} host */
export function opener(host) {
  const named = host.getAttribute(ATTRIBUTE.share);
  return reached(named ? URL.parse(named, document.baseURI) : framePage());
}

/** The package's own page for frames: no header and footer of a site stand around the set there. */
const framePage = () => home && new URL("frame.html", home);

/** @param {URL | null | undefined} page */
function reached(page) {
  if (!page || !/^https?:$/.test(page.protocol)) return undefined;
  page.hash = "";
  return page;
}

/** A link to the set as it is shown, at this moment or from its start. @param {OnPage} set @param {boolean} [moment] */
export function link(set, moment = false) {
  return `${opener(set.host)}#${fragment(set, moment)}`;
}

/** @param {OnPage} set @param {boolean} [moment] */
function fragment({ host, play, state }, moment = false) {
  const shown = play.link({
    ...(moment && { from: state.time, paused: true }),
    read: play.read.split(".").map(Number).filter(Boolean),
    follow: state.follow,
    coverage: host.coverage,
    speed: state.rate === GAME ? undefined : state.rate,
  });
  return isInSpanish(host) ? `${shown}&lang=${encodeURIComponent(languageAround(host))}` : shown;
}

/** The page's own address, at the element where that has a name; undefined for a page without one. @param {BackcutSet} host */
export function page(host) {
  if (!/^https?:$/.test(location.protocol)) return undefined;
  const [address] = location.href.split("#");
  return host.id ? `${address}#${encodeURIComponent(host.id)}` : address;
}

/** What of this page is no part of the set: another page has names and clocks of its own. @type {Set<string>} */
const HERE = new Set([ATTRIBUTE.src, ATTRIBUTE.sync]);
/** What a link has already, since it holds the set as it is shown. @type {Set<string>} */
const LINKED = new Set([ATTRIBUTE.court, ATTRIBUTE.level, ATTRIBUTE.mirrored]);
/** What names a place as seen from this page. @type {Set<string>} */
const ADDRESSES = new Set([ATTRIBUTE.poster, ATTRIBUTE.film, ATTRIBUTE.share]);

/** The script and the tag, for a page anywhere; the script by the hash that this site's file has. @param {OnPage} set */
export async function tag(set) {
  const { host, play } = set;
  const file = address(host);
  const words = [["src", file ?? `#${play.link({})}`]];
  for (const name of Object.values(ATTRIBUTE)) {
    const value = host.getAttribute(name);
    if (value === null || HERE.has(name) || (!file && LINKED.has(name))) continue;
    words.push([name, value && ADDRESSES.has(name) ? absolute(value) : value]);
  }
  const said = words.map(([name, value]) => (value ? ` ${name}="${escape(value)}"` : ` ${name}`));
  // Where no script runs there is a way to where one does.
  const elsewhere = linkOrFile(set);
  const title = escape(play.title);
  const instead = elsewhere ? `<a href="${escape(elsewhere)}">${title}</a>` : title;
  const element = `<${TAG}${said.join("")}>${instead}</${TAG}>`;
  const script = await scriptOf();
  return script ? `${script}\n${element}` : element;
}

/** @param {OnPage} set */
function linkOrFile(set) {
  try {
    if (opener(set.host)) return link(set);
  } catch {
    // Too large for a link.
  }
  return address(set.host);
}

async function scriptOf() {
  if (!home) return undefined;
  const { href } = new URL("backcut.js", home);
  const response = await fetch(href).catch(() => undefined);
  // It may have been bundled with a page's own scripts.
  if (!response?.ok) return undefined;
  const integrity = await hashOf(await response.arrayBuffer());
  return `<script type="module" src="${href}"${integrity} crossorigin="anonymous"></script>`;
}

/** @param {ArrayBuffer} bytes */
async function hashOf(bytes) {
  // A page without a secure context has no hashes.
  if (!crypto.subtle) return "";
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-384", bytes));
  return ` integrity="sha384-${btoa(String.fromCharCode(...hash))}"`;
}

/** A frame, for a page that may hold no script. @param {OnPage} set @param {Say} say */
export function frame(set, say) {
  const { width, height } = set.host.getBoundingClientRect();
  const [w, h] = [Math.ceil(width), Math.ceil(height - set.panel)];
  const title = escape(say.frameTitle({ title: set.play.title }));
  const source = `${reached(framePage()) ?? opener(set.host)}#${fragment(set)}`;
  return (
    `<iframe src="${escape(source)}" title="${title}" loading="lazy" ` +
    `allow="fullscreen; clipboard-write; web-share" width="${w}" height="${h}" ` +
    `style="border: 0; inline-size: 100%; block-size: auto; aspect-ratio: ${w} / ${h}"></iframe>`
  );
}

/** The set file itself, as the set is shown. @param {OnPage} set */
export const text = ({ play }) => play.text;

/** The set file's address; undefined for one that stands in the page or in a link. @param {BackcutSet} host */
export function address({ src }) {
  return src && !src.includes("#") ? absolute(src) : undefined;
}

/** @param {string} address as seen from this page */
function absolute(address) {
  return URL.parse(address, document.baseURI)?.href ?? address;
}

/** @param {string} text */
function escape(text) {
  return text.replace(/[&<>"]/g, (letter) => `&#${letter.charCodeAt(0)};`);
}
