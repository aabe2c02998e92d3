// One Chromium for all rows, and what the operating system says of its processes.

import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";

const ARGS = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--enable-precise-memory-info",
  "--disable-features=SpareRendererForSitePerProcess",
  "--js-flags=--expose-gc",
];
/** A cheap phone on slow 4G: the mobile preset of Lighthouse. From memory. */
const PHONE = {
  cpu: 4,
  network: {
    offline: false,
    latency: 150,
    downloadThroughput: 1.6e6 / 8,
    uploadThroughput: 0.75e6 / 8,
  },
};

export async function start(executablePath, density) {
  const profile = mkdtempSync(join(tmpdir(), "players-"));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath,
    viewport: { width: 820, height: 900 },
    deviceScaleFactor: density,
    args: ARGS,
  });
  const ticks = Number(execFileSync("getconf", ["CLK_TCK"]));
  const sum = (read) =>
    processes(profile).reduce((total, pid) => {
      try {
        return total + read(pid);
      } catch {
        return total; // It has ended since.
      }
    }, 0);
  return {
    version: context.browser()?.version() ?? "",
    open: (url, phone) => open(context, url, phone),
    /** CPU seconds of all its processes. */
    cpu: () =>
      sum((pid) => {
        const fields = readFileSync(`/proc/${pid}/stat`, "utf8")
          .replace(/^.*\) /, "")
          .split(" ");
        return (Number(fields[11]) + Number(fields[12])) / ticks;
      }),
    /** Proportional memory of all its processes, MB. */
    memory: () =>
      sum((pid) => {
        const rollup = readFileSync(`/proc/${pid}/smaps_rollup`, "utf8");
        return Number(rollup.match(/\nPss:\s+(\d+)/)[1]) / 1000;
      }),
    async stop() {
      await context.close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}

async function open(context, url, phone) {
  const page = await context.newPage();
  const cdp = await context.newCDPSession(page);
  await cdp.send("Network.enable");
  await cdp.send("Network.setCacheDisabled", { cacheDisabled: true });
  if (phone) {
    await cdp.send("Network.emulateNetworkConditions", PHONE.network);
    await cdp.send("Emulation.setCPUThrottlingRate", { rate: PHONE.cpu });
  }
  await page.goto(url, { waitUntil: "commit" });
  await page.waitForFunction(() => window.bench?.done, null, { timeout: 60_000 });
  const bench = await page.evaluate(() => ({ ...window.bench }));
  if (bench.error) throw new Error(`${url}: ${bench.error}`);
  return { page, cdp, bench };
}

/** Everything that descends from what was started with this profile. */
function processes(profile) {
  const lines = execFileSync("ps", ["-eo", "pid=,ppid=,args="]).toString().trim().split("\n");
  const all = lines.map((line) => {
    const [, pid, parent, args] = line.trim().match(/^(\d+)\s+(\d+)\s+(.*)$/);
    return { pid: Number(pid), parent: Number(parent), args };
  });
  const ours = new Set(all.filter(({ args }) => args.includes(profile)).map(({ pid }) => pid));
  for (let before = -1; before !== ours.size;) {
    before = ours.size;
    for (const { pid, parent } of all) if (ours.has(parent)) ours.add(pid);
  }
  return [...ours];
}
