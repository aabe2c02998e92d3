// The floor: canvas 2D by hand, no library. It shows what the drawing itself costs in this browser.
const bez = (p, u, i) => {
  const v = 1 - u;
  return (
    v * v * v * p[0][i] + 3 * v * v * u * p[1][i] + 3 * v * u * u * p[2][i] + u * u * u * p[3][i]
  );
};
// x(s) = 3(1-s)^2 s x1 + 3(1-s) s^2 x2 + s^3, solved by Newton, as a CSS cubic-bezier timing curve is
function ease([x1, y1, x2, y2], x) {
  let s = x;
  for (let n = 0; n < 8; n++) {
    const v = 1 - s,
      f = 3 * v * v * s * x1 + 3 * v * s * s * x2 + s * s * s - x;
    const d = 3 * v * v * x1 + 6 * v * s * (x2 - x1) + 3 * s * s * (1 - x2);
    if (Math.abs(d) < 1e-9) break;
    s -= f / d;
  }
  const v = 1 - s;
  return 3 * v * v * s * y1 + 3 * v * s * s * y2 + s * s * s;
}
// Lottie walks a Bezier by distance, not by its parameter; so does this: 64 chords a segment, made once
function walk(p) {
  const at = [0];
  for (let i = 1; i <= 64; i++)
    at.push(
      at[i - 1] +
        Math.hypot(
          bez(p, i / 64, 0) - bez(p, (i - 1) / 64, 0),
          bez(p, i / 64, 1) - bez(p, (i - 1) / 64, 1),
        ),
    );
  return (s) => {
    const d = s * at[64];
    let i = 1;
    while (i < 64 && at[i] < d) i++;
    return (i - 1 + (d - at[i - 1]) / (at[i] - at[i - 1] || 1)) / 64;
  };
}
export async function load(el, src) {
  const scene = await (await fetch(`${src}.scene.json`)).json();
  const canvas = document.createElement("canvas");
  const dpr = devicePixelRatio;
  canvas.width = scene.width * dpr;
  canvas.height = scene.height * dpr;
  canvas.style.cssText = "width:100%;height:100%;display:block";
  el.append(canvas);
  const c = canvas.getContext("2d");
  for (const m of scene.movers) for (const g of m.path) g.walk = walk(g.p);
  const court = new Path2D();
  for (const e of scene.court) {
    if (e.kind === "line") {
      court.moveTo(...e.points[0]);
      court.lineTo(...e.points[1]);
    } else {
      court.moveTo(e.c[0] + e.r * Math.cos(e.from), e.c[1] + e.r * Math.sin(e.from));
      court.arc(...e.c, e.r, e.from, e.to);
    }
  }
  const seek = (t) => {
    c.setTransform(dpr, 0, 0, dpr, 0, 0);
    c.fillStyle = scene.style.floor;
    c.fillRect(0, 0, scene.width, scene.height);
    c.strokeStyle = scene.style.line;
    c.lineWidth = scene.style.lineWidth;
    c.stroke(court);
    c.lineWidth = 2;
    c.font = "600 15px sans-serif";
    c.textAlign = "center";
    c.textBaseline = "middle";
    for (const m of scene.movers) {
      const s = scene.style[m.team],
        g = m.path.find((q) => t <= q.t1) ?? m.path[m.path.length - 1];
      const u = g.walk(ease(scene.ease, Math.min(1, Math.max(0, (t - g.t0) / (g.t1 - g.t0)))));
      const x = bez(g.p, u, 0),
        y = bez(g.p, u, 1);
      c.beginPath();
      c.arc(x, y, s.r, 0, 2 * Math.PI);
      c.fillStyle = s.fill;
      c.fill();
      c.strokeStyle = s.stroke;
      c.stroke();
      if (m.label) {
        c.fillStyle = s.text;
        c.fillText(m.label, x, y);
      }
    }
  };
  seek(0);
  return {
    seek,
    frameReady: Promise.resolve(),
    destroy() {
      canvas.width = canvas.height = 0;
      canvas.remove();
    },
  };
}
