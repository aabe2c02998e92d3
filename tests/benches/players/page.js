// Runs inside the page; what `run.mjs` asks for is on `window.bench`.

const DURATION = 12;

/** Settles once the browser has made a frame. */
const shown = () =>
  new Promise((resolve) =>
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => resolve(performance.now());
      channel.port2.postMessage(0);
    }),
  );

function stats(times) {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  return { mean: sorted.reduce((a, b) => a + b, 0) / sorted.length, p95: at(0.95) };
}

/** Has the browser finish drawing a canvas, or laying out an SVG. */
function flush(player, stage) {
  if (player.flush) return player.flush();
  const canvas = stage.querySelector("canvas");
  if (canvas) canvas.getContext("2d").getImageData(0, 0, 1, 1);
  else stage.querySelector("svg")?.getBoundingClientRect();
}

export async function start(load) {
  const count = Number(new URLSearchParams(location.search).get("n") ?? 1);
  const main = document.querySelector("main");
  const stages = Array.from({ length: count }, () => {
    const stage = document.createElement("div");
    stage.className = "stage";
    main.append(stage);
    return stage;
  });
  const [{ startTime: script }] = performance.getEntriesByName("script");
  const run = { error: null };
  window.bench = run;
  try {
    const all = await Promise.all(stages.map((stage) => load(stage, "/motion/court")));
    run.drawnSinceNavigation = performance.now();
    run.drawn = run.drawnSinceNavigation - script;
    run.shownSinceNavigation = await shown();
    const resources = performance.getEntriesByType("resource");
    run.transferred = resources.reduce((sum, entry) => sum + (entry.encodedBodySize || 0), 0);
    run.seek = (t) => {
      for (const player of all) player.seek(t);
    };
    run.seekSync = (frames, flushed, order = "forward") => {
      const times = Array.from({ length: frames }, (_, i) => (i * DURATION) / frames);
      let seed = 1;
      const random = () => (seed = (seed * 16807) % 2147483647) / 2147483647 - 0.5;
      if (order === "random") times.sort(random);
      return stats(
        times.map((t) => {
          const from = performance.now();
          run.seek(t);
          if (flushed) all.forEach((player, i) => flush(player, stages[i]));
          return performance.now() - from;
        }),
      );
    };
    run.seekFrames = (frames) =>
      new Promise((resolve) => {
        const from = performance.now();
        let i = 0;
        const end = () => resolve((frames * 1000) / (performance.now() - from));
        const step = () => {
          run.seek((i * DURATION) / frames);
          requestAnimationFrame((i += 1) < frames ? step : end);
        };
        requestAnimationFrame(step);
      });
    run.end = () => {
      for (const player of all) player.destroy();
      main.replaceChildren();
    };
  } catch (reason) {
    run.error = String(reason?.stack ?? reason);
  }
  run.done = true;
}
