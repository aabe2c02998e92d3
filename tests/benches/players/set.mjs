// The motion as a set file.
//
// The same places at about the same times: how a player speeds up and turns is ours to say. Defenders
// are simulated, so a row with a defence has as many bodies as the others, on other paths.

import { movers } from "./motion.mjs";

const own = movers.filter(([, team]) => team === "a");
const runs = own.flatMap(([label, , points]) =>
  points.slice(1).map(([t, x, y], i) => ({
    t,
    action: {
      who: +label,
      do: label === "1" && t <= 8 ? "dribble" : "cut",
      to: [x, y],
      takes: t - points[i][0],
    },
  })),
);
const pass = { t: 8.1, action: { who: 1, do: "pass", to: 2 } };
export const set = {
  backcut: 1,
  title: "Bench",
  court: "fiba",
  level: "adult",
  players: Object.fromEntries(
    own.map(([label, , [[, x, y]]]) => [
      label,
      { at: [x, y], ...(label === "1" && { ball: true }) },
    ]),
  ),
  beats: [
    {
      title: "All of it",
      say: "Twelve seconds.",
      actions: [...runs, pass].sort((a, b) => a.t - b.t).map(({ action }) => action),
    },
  ],
};
