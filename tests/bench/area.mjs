// How the area by corners grows with the corners: time a corner, against that of the smallest outline of the same run.
import { polygonArea } from '../../dist/area/index.js';

const round = (corners) =>
  Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    return [500000 + 50 * Math.cos(angle), 5400000 + 50 * Math.sin(angle)];
  });
/** A hall with teeth: many corners above each other. */
const teeth = (corners) => {
  const points = [];
  for (let x = 0; points.length < corners - 2; x += 4) points.push([x, 0], [x, 10], [x + 2, 10], [x + 2, 0]);
  return [...points, [2 * corners, -1], [0, -1]];
};
const least = (run, times) => {
  let best = Infinity;
  for (let i = 0; i < times; i++) {
    const start = performance.now();
    run();
    best = Math.min(best, performance.now() - start);
  }
  return best;
};

for (const [name, outline] of Object.entries({ round, teeth })) {
  let first;
  for (const corners of [6250, 12500, 25000, 50000, 100000]) {
    const input = { corners: { unit: 'm', points: outline(corners) }, unit: 'm2' };
    const ms = least(() => polygonArea(input), 15);
    first ??= ms / corners;
    const perCorner = ms / corners / first;
    console.log(
      `${name} ${String(corners).padStart(6)} corners: ${ms.toFixed(1)} ms, ${perCorner.toFixed(2)} times a corner of the smallest`,
    );
  }
}
