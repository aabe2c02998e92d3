// The motion for players of Lottie files (lottie-spec 1.0).

import { DURATION, EASE, scene } from "./motion.mjs";

const FPS = 60;

// Glyphs of our own: strokes on a 60 x 100 cell, widened to closed rectangles
const bar = (x0, y0, x1, y1) => {
  const w = 8,
    d = Math.hypot(x1 - x0, y1 - y0),
    nx = (-(y1 - y0) / d) * w,
    ny = ((x1 - x0) / d) * w,
    ux = ((x1 - x0) / d) * w,
    uy = ((y1 - y0) / d) * w;
  return [
    [x0 - ux + nx, y0 - uy + ny],
    [x1 + ux + nx, y1 + uy + ny],
    [x1 + ux - nx, y1 + uy - ny],
    [x0 - ux - nx, y0 - uy - ny],
  ];
};
const S = {
  top: [10, -70, 50, -70],
  mid: [10, -35, 50, -35],
  bot: [10, 0, 50, 0],
  tl: [10, -70, 10, -35],
  tr: [50, -70, 50, -35],
  bl: [10, -35, 10, 0],
  br: [50, -35, 50, 0],
};
const glyphs = {
  1: [
    [30, -70, 30, 0],
    [16, -60, 30, -70],
  ],
  2: [S.top, S.tr, S.mid, S.bl, S.bot],
  3: [S.top, S.tr, S.mid, S.br, S.bot],
  4: [S.tl, S.mid, S.tr, S.br],
  5: [S.top, S.tl, S.mid, S.br, S.bot],
  X: [
    [10, -70, 50, 0],
    [50, -70, 10, 0],
  ],
};

const hex = (h) =>
  [1, 3, 5].map((i) => +(parseInt(h.slice(i, i + 2), 16) / 255).toFixed(4)).concat(1);
const k = (v) => ({ a: 0, k: v });
const tr = () => ({ ty: "tr", p: k([0, 0]), a: k([0, 0]), s: k([100, 100]), r: k(0), o: k(100) });
const still = (p = [0, 0, 0]) => ({
  o: k(100),
  r: k(0),
  p: k(p),
  a: k([0, 0, 0]),
  s: k([100, 100, 100]),
});
const fill = (c) => ({ ty: "fl", c: k(hex(c)), o: k(100), r: 1 });
const stroke = (c, w) => ({ ty: "st", c: k(hex(c)), o: k(100), w: k(w), lc: 1, lj: 1, ml: 4 });
const zero = (n) => Array.from({ length: n }, () => [0, 0]);
const sh = (v, i, o, c) => ({ ty: "sh", ks: k({ v, i, o, c }) });
function arcShape({ c, r, from, to }) {
  const n = Math.max(1, Math.ceil((to - from) / (Math.PI / 2) - 1e-9)),
    step = (to - from) / n,
    h = (4 / 3) * Math.tan(step / 4) * r;
  const closed = Math.abs(to - from - 2 * Math.PI) < 1e-9,
    m = closed ? n : n + 1;
  const v = [],
    i = [],
    o = [],
    f = (x) => +x.toFixed(3);
  for (let j = 0; j < m; j++) {
    const a = from + step * j,
      tx = -Math.sin(a) * h,
      ty = Math.cos(a) * h;
    v.push([f(c[0] + r * Math.cos(a)), f(c[1] + r * Math.sin(a))]);
    i.push(closed || j > 0 ? [f(-tx), f(-ty)] : [0, 0]);
    o.push(closed || j < m - 1 ? [f(tx), f(ty)] : [0, 0]);
  }
  return sh(v, i, o, closed);
}
const base = (ind, nm, ty, ks, rest) => ({
  ddd: 0,
  ind,
  ty,
  nm,
  sr: 1,
  ks,
  ao: 0,
  ip: 0,
  op: FPS * DURATION,
  st: 0,
  bm: 0,
  ...rest,
});
const moving = (path) => ({
  a: 1,
  k: path.flatMap((g, i) => {
    const d = (u, v) => [+(u[0] - v[0]).toFixed(3), +(u[1] - v[1]).toFixed(3), 0];
    const f = {
      t: g.t0 * FPS,
      s: [...g.p[0], 0],
      to: d(g.p[1], g.p[0]),
      ti: d(g.p[2], g.p[3]),
      o: { x: EASE[0], y: EASE[1] },
      i: { x: EASE[2], y: EASE[3] },
    };
    return i === path.length - 1 ? [f, { t: g.t1 * FPS, s: [...g.p[3], 0] }] : [f];
  }),
});
const layers = [];
let ind = 1;
for (const m of [...scene.movers].reverse()) {
  const st = scene.style[m.team],
    body = ind + (m.label ? 1 : 0);
  if (m.label)
    layers.push(
      base(
        ind++,
        `label ${m.label}`,
        5,
        { ...still([0, 7, 0]) },
        {
          parent: body,
          t: {
            d: {
              k: [
                {
                  t: 0,
                  s: {
                    s: 19,
                    f: "Block",
                    t: m.label,
                    j: 2,
                    tr: 0,
                    lh: 22,
                    ls: 0,
                    fc: hex(st.text).slice(0, 3),
                  },
                },
              ],
            },
            p: {},
            m: { g: 1, a: k([0, 0]) },
            a: [],
          },
        },
      ),
    );
  layers.push(
    base(
      ind++,
      `mover ${m.label || "ball"}`,
      4,
      { ...still(), p: moving(m.path) },
      {
        shapes: [
          {
            ty: "gr",
            nm: "body",
            it: [
              { ty: "el", p: k([0, 0]), s: k([2 * st.r, 2 * st.r]), d: 1 },
              stroke(st.stroke, 2),
              fill(st.fill),
              tr(),
            ],
          },
        ],
      },
    ),
  );
}
layers.push(
  base(ind++, "court", 4, still(), {
    shapes: [
      {
        ty: "gr",
        nm: "lines",
        it: [
          ...scene.court.map((e) =>
            e.kind === "line"
              ? sh(e.points, zero(e.points.length), zero(e.points.length), false)
              : arcShape(e),
          ),
          stroke(scene.style.line, scene.style.lineWidth),
          tr(),
        ],
      },
    ],
  }),
);
layers.push(
  base(ind++, "floor", 4, still(), {
    shapes: [
      {
        ty: "gr",
        nm: "floor",
        it: [
          {
            ty: "rc",
            p: k([scene.width / 2, scene.height / 2]),
            s: k([scene.width, scene.height]),
            r: k(0),
            d: 1,
          },
          fill(scene.style.floor),
          tr(),
        ],
      },
    ],
  }),
);
export const lottie = {
  v: "5.12.2",
  fr: FPS,
  ip: 0,
  op: FPS * DURATION,
  w: scene.width,
  h: scene.height,
  nm: "court",
  ddd: 0,
  assets: [],
  fonts: { list: [{ fName: "Block", fFamily: "Block", fStyle: "Regular", ascent: 72 }] },
  chars: Object.entries(glyphs).map(([ch, strokes]) => ({
    ch,
    size: 100,
    style: "Regular",
    w: 60,
    fFamily: "Block",
    data: {
      shapes: [
        {
          ty: "gr",
          nm: ch,
          it: strokes.map((s) => {
            const v = bar(...s).map((p) => p.map((x) => +x.toFixed(2)));
            return sh(v, zero(4), zero(4), true);
          }),
        },
      ],
    },
  })),
  layers,
  markers: [],
};
