// Plays one motion with several general-purpose animation players and ours, in one browser run.
//
//     npm run bench:players [-- --players=a,b --repeat=15 --rounds=3 --dpr=1 --shots]
//
// Starts are interleaved, so that another load on the machine hits every player alike. Compare rows
// of one run only.

import { mkdirSync } from "node:fs";
import { cpus } from "node:os";
import { start } from "./browser.mjs";
import { players } from "./players.mjs";
import { serve } from "./serve.mjs";

const FRAMES = 200;

const option = (name, otherwise) =>
  process.argv.find((arg) => arg.startsWith(`--${name}=`))?.slice(name.length + 3) ?? otherwise;
const names = option("players", Object.keys(players).join(",")).split(",");
const repeat = Number(option("repeat", 15));
const rounds = Number(option("rounds", 3));
const density = Number(option("dpr", 1));

/** @param {string} executable where Chromium is */
export async function compare(executable) {
  const server = await serve();
  const browser = await start(executable, density);
  const address = (name, count) => `${server.url}/play/${name}?n=${count}`;
  const results = new Map(
    names.map((name) => [name, { local: [], phone: [], twenty: [], 1: [], 20: [] }]),
  );
  if (process.argv.includes("--shots")) await shots(browser, address);
  for (let i = 0; i < repeat; i += 1) {
    for (const [name, result] of results) {
      for (const [kind, count] of [
        ["local", 1],
        ["phone", 1],
        ["twenty", 20],
      ]) {
        if (kind !== "local" && i >= Math.ceil(repeat / 3)) continue;
        const { page, bench } = await browser.open(address(name, count), kind === "phone");
        result[kind].push(bench);
        await page.close();
      }
    }
  }
  for (let round = 0; round < rounds; round += 1) {
    for (const [name, result] of results) {
      for (const count of [1, 20]) result[count].push(await frames(browser, address(name, count)));
    }
  }
  console.log(
    `${cpus()[0].model} x ${cpus().length}, Chromium ${browser.version}, density ${density}, ` +
      `${repeat} starts, ${rounds} rounds; medians`,
  );
  report(results);
  await browser.stop();
  server.close();
}

async function shots(browser, address) {
  mkdirSync("target/shots", { recursive: true });
  for (const name of names) {
    const { page } = await browser.open(address(name, 1));
    await page.evaluate(() => window.bench.seek(6.2));
    await page.screenshot({ path: `target/shots/${name}.png` });
    await page.close();
  }
}

/** What frames cost, and what the page holds. */
async function frames(browser, url) {
  const { page, cdp } = await browser.open(url);
  await cdp.send("Performance.enable", { timeDomain: "timeTicks" });
  const seek = (...how) => page.evaluate((how) => window.bench.seekSync(...how), how);
  await seek(FRAMES / 5, false);
  const measured = {
    script: (await seek(FRAMES, false)).mean,
    random: (await seek(FRAMES, false, "random")).mean,
    flushed: (await seek(FRAMES, true)).mean,
  };
  const task = async () => {
    const { metrics } = await cdp.send("Performance.getMetrics");
    return metrics.find(({ name }) => name === "TaskDuration").value;
  };
  const [main, cpu] = [await task(), browser.cpu()];
  measured.fps = await page.evaluate((count) => window.bench.seekFrames(count), FRAMES);
  measured.main = ((await task()) - main) * (1000 / FRAMES);
  measured.cpu = (browser.cpu() - cpu) * (1000 / FRAMES);
  measured.heap = await heap(page);
  measured.memory = browser.memory();
  await page.evaluate(() => window.bench.end());
  await heap(page);
  measured.after = browser.memory();
  await page.close();
  return measured;
}

/** Collects what can be collected, thrice, as a browser does it in steps; what is left, MB. */
const heap = (page) =>
  page.evaluate(async () => {
    for (let i = 0; i < 3; i += 1) {
      window.gc();
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    return performance.memory.usedJSHeapSize / 1e6;
  });

function median(values) {
  const sorted = values.filter(Number.isFinite).sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? NaN;
}

function report(results) {
  const of = (name, kind, what) => median(results.get(name)[kind].map((row) => row[what]));
  const blank = (count) => (results.has("blank") ? of("blank", count, "memory") : 0);
  table(results, [
    ["first frame drawn, ms", (name) => of(name, "local", "drawn"), 0],
    ["navigation to shown, ms", (name) => of(name, "local", "shownSinceNavigation"), 0],
    ["phone: navigation to drawn, ms", (name) => of(name, "phone", "drawnSinceNavigation"), 0],
    ["phone: to shown, ms", (name) => of(name, "phone", "shownSinceNavigation"), 0],
    ["20: all drawn, ms", (name) => of(name, "twenty", "drawn"), 0],
    ["kB on the wire", (name) => of(name, "local", "transferred") / 1000, 1],
  ]);
  for (const count of [1, 20]) {
    table(results, [
      [`${count}: seek, script ms`, (name) => of(name, count, "script"), 3],
      ["in random order", (name) => of(name, count, "random"), 3],
      ["seek and drawing, ms", (name) => of(name, count, "flushed"), 3],
      ["a frame: main ms", (name) => of(name, count, "main"), 2],
      ["CPU ms", (name) => of(name, count, "cpu"), 2],
      ["fps", (name) => of(name, count, "fps"), 0],
      ["JS heap MB", (name) => of(name, count, "heap"), 1],
      ["MB over blank", (name) => of(name, count, "memory") - blank(count), 0],
      ["after removal", (name) => of(name, count, "after") - blank(count), 0],
    ]);
  }
}

/** Prints a table in Markdown. */
function table(results, columns) {
  console.log(`\n| player | ${columns.map(([head]) => head).join(" | ")} |`);
  console.log(`|---|${columns.map(() => "--:|").join("")}`);
  for (const name of results.keys()) {
    const cells = columns.map(([, value, digits]) => value(name).toFixed(digits));
    console.log(`| ${name} | ${cells.join(" | ")} |`);
  }
}
