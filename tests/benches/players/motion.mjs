// An invented motion of ten players and a ball as a plain scene: lines, movers, Bezier segments. Court:
// FIBA Official Basketball Rules 2024, article 2.

export const DURATION = 12;
const W = 800;
const H = 450;
const PX = 40; // pixels a metre; the ring's side at the top
const X = (m) => +(W / 2 + m * PX).toFixed(3); // m from the long axis
const Y = (m) => +(20 + m * PX).toFixed(3); // m from the end line
const R = (m) => +(m * PX).toFixed(3);
const RING = 1.575;

// Court: 13 line elements
const line = (...p) => ({ kind: "line", points: p.map(([x, y]) => [X(x), Y(y)]) });
const arc = (cx, cy, r, from, to) => ({ kind: "arc", c: [X(cx), Y(cy)], r: R(r), from, to }); // radians, clockwise from +x on screen
const threeY = RING + Math.sqrt(6.75 ** 2 - 6.6 ** 2);
const threeA = Math.asin((threeY - RING) / 6.75);
const court = [
  line([-7.5, 0], [7.5, 0]),
  line([-7.5, 0], [-7.5, 10.75]),
  line([7.5, 0], [7.5, 10.75]),
  line([-2.45, 0], [-2.45, 5.8]),
  line([2.45, 0], [2.45, 5.8]),
  line([-2.45, 5.8], [2.45, 5.8]),
  arc(0, 5.8, 1.8, 0, Math.PI),
  line([-6.6, 0], [-6.6, threeY]),
  line([6.6, 0], [6.6, threeY]),
  arc(0, RING, 6.75, threeA, Math.PI - threeA),
  arc(0, RING, 1.25, 0, Math.PI),
  line([-0.9, 1.2], [0.9, 1.2]),
  arc(0, RING, 0.225, 0, 2 * Math.PI),
];

// Movers: [label, team, waypoints [t, x, y]] in seconds and metres
export const movers = [
  [
    "1",
    "a",
    [
      [0, 0, 8.8],
      [2, 0.6, 8.4],
      [4.5, 4.6, 6.9],
      [8, 4.2, 7.4],
      [10, 3.2, 7.8],
      [12, 3.0, 7.6],
    ],
  ],
  [
    "2",
    "a",
    [
      [0, -6.2, 1.6],
      [3, -2.6, 2.2],
      [5.5, 0.2, 5.9],
      [7, 2.2, 7.4],
      [12, 1.6, 8.0],
    ],
  ],
  [
    "3",
    "a",
    [
      [0, 6.4, 2.0],
      [4, 6.2, 1.4],
      [6.5, 3.4, 1.2],
      [9, -2.4, 1.0],
      [12, -6.2, 1.8],
    ],
  ],
  [
    "4",
    "a",
    [
      [0, -2.6, 5.6],
      [2.5, -2.2, 4.6],
      [5, -1.0, 5.2],
      [8, -0.4, 5.0],
      [10.5, -3.0, 3.0],
      [12, -2.8, 2.6],
    ],
  ],
  [
    "5",
    "a",
    [
      [0, 2.6, 2.6],
      [4, 2.6, 4.4],
      [6, 1.4, 5.6],
      [9, 1.0, 3.0],
      [12, 0.6, 1.9],
    ],
  ],
  [
    "X1",
    "b",
    [
      [0, 0, 7.6],
      [2.4, 0.6, 7.3],
      [5, 4.0, 6.0],
      [8.4, 3.8, 6.5],
      [12, 2.6, 6.8],
    ],
  ],
  [
    "X2",
    "b",
    [
      [0, -5.0, 2.0],
      [3.3, -2.0, 2.6],
      [6.2, -0.4, 5.2],
      [7.6, 1.6, 6.6],
      [12, 1.2, 7.0],
    ],
  ],
  [
    "X3",
    "b",
    [
      [0, 4.6, 2.4],
      [4.2, 4.4, 2.0],
      [6.9, 2.6, 1.8],
      [9.4, -1.8, 1.8],
      [12, -4.8, 2.2],
    ],
  ],
  [
    "X4",
    "b",
    [
      [0, -2.0, 4.4],
      [3, -1.6, 3.6],
      [6, -0.6, 4.2],
      [10.7, -2.0, 2.6],
      [12, -1.9, 2.3],
    ],
  ],
  [
    "X5",
    "b",
    [
      [0, 1.8, 2.2],
      [4.3, 1.7, 3.6],
      [6.4, 0.9, 4.6],
      [9.3, 0.7, 2.5],
      [12, 0.4, 1.7],
    ],
  ],
  [
    "",
    "ball",
    [
      [0, 0.3, 8.5],
      [2, 0.9, 8.1],
      [4.5, 4.9, 6.6],
      [7.1, 4.5, 7.1],
      [7.7, 2.2, 7.2],
      [10, 1.9, 7.8],
      [10.9, 0.7, 2.1],
      [11.3, 0.2, 1.7],
      [12, 0, 1.575],
    ],
  ],
];
// Catmull-Rom tangents turned into cubic control points, one segment a pair of waypoints; each segment eases in and out.
export const EASE = [0.42, 0, 0.58, 1];
const segments = (pts) =>
  pts.slice(1).map((b, i) => {
    const a = pts[i],
      p = pts[Math.max(0, i - 1)],
      n = pts[Math.min(pts.length - 1, i + 2)];
    const px = (q) => [X(q[1]), Y(q[2])];
    const [A, B, P, N] = [px(a), px(b), px(p), px(n)];
    const c = (u, v, w, s) => +(u + (s * (w - v)) / 6).toFixed(3);
    return {
      t0: a[0],
      t1: b[0],
      p: [
        A,
        [c(A[0], P[0], B[0], 1), c(A[1], P[1], B[1], 1)],
        [c(B[0], A[0], N[0], -1), c(B[1], A[1], N[1], -1)],
        B,
      ],
    };
  });
const style = {
  floor: "#F6F2E9",
  line: "#8A8F8A",
  lineWidth: 2,
  a: { r: 15, fill: "#0E5E63", stroke: "#1F2A33", text: "#FFFFFF" },
  b: { r: 15, fill: "#F6F2E9", stroke: "#1F2A33", text: "#1F2A33" },
  ball: { r: 7, fill: "#C98A1B", stroke: "#1F2A33", text: "" },
};
export const scene = {
  width: W,
  height: H,
  duration: DURATION,
  ease: EASE,
  style,
  court,
  movers: movers.map(([label, team, pts]) => ({ label, team, path: segments(pts) })),
};
