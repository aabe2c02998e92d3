// Writes snippet.html, the lines that a page needs to play a set: the folder by its version, the
// script by its hash, so that nothing else than this build can run in its place.

import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";

/** The lines for the package in `pkg`, whose first wasm file is `wasmFile`. */
export function snippet(pkg, version, wasmFile) {
  const script = readFileSync(join(pkg, "backcut.js"));
  const hash = createHash("sha384").update(script).digest("base64");
  const at = `/backcut-${version}/`;
  return `<!-- The package lies at ${at} of your site. In the page's head: -->
<link rel="modulepreload" href="${at}backcut.js" integrity="sha384-${hash}" crossorigin>
<link rel="preload" as="fetch" href="${at}${wasmFile}" crossorigin>
<script type="module" src="${at}backcut.js" integrity="sha384-${hash}" crossorigin></script>

<!-- Where the set is to be seen: -->
<backcut-set src="/set.json"><a href="/set.json">The set, as a file</a></backcut-set>
`;
}
