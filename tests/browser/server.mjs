// A static web server for the tests: the right media types, and the policy that the package
// promises to get by with. Nothing is cached.

import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));

const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".wasm": "application/wasm",
};

/** The policy under which everything must work. */
export const POLICY = "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'";

/**
 * Serves a folder, the project's own unless another is named, on a free local port.
 *
 * @param {Record<string, { status?: number, type?: string, body?: string, delay?: Promise<void>, policy?: string }>} answers
 *     answers of its own, by path
 */
export async function serve(answers = {}, folder = root) {
  const server = createServer(async (request, response) => {
    const path = new URL(request.url ?? "/", "http://localhost").pathname;
    const own = answers[path];
    try {
      await own?.delay;
      const body = own ? (own.body ?? "") : await readFile(join(folder, normalize(path)));
      const type = own?.type ?? TYPES[extname(path)] ?? "application/octet-stream";
      const headers = {
        "content-type": type,
        "content-security-policy": own?.policy ?? POLICY,
        "cache-control": "no-store",
      };
      // A film that cannot be had in parts cannot be sought in.
      const [, from, to] = /^bytes=(\d+)-(\d*)$/.exec(request.headers.range ?? "") ?? [];
      if (from === undefined || own?.status)
        return response.writeHead(own?.status ?? 200, headers).end(body);
      const last = Math.min(Number(to || Infinity), body.length - 1);
      const range = { "content-range": `bytes ${from}-${last}/${body.length}` };
      response.writeHead(206, { ...headers, ...range }).end(body.subarray(Number(from), last + 1));
    } catch {
      response.writeHead(404, { "content-type": "text/plain" }).end();
    }
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address();
  return { origin: `http://127.0.0.1:${port}`, close: () => server.close(), answers };
}
