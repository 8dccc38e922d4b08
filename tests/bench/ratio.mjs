// Compares functions within one run: the median over rounds of the time of one against the other.

/** Nanoseconds a call over the inputs, for each function, measured in turn; the medians of the rounds. */
export function medians(functions, inputs, { rounds = 15, calls = 200_000 } = {}) {
  const times = functions.map(() => []);
  let sink = 0;
  for (let round = 0; round < rounds; round++) {
    functions.forEach((run, i) => {
      const start = process.hrtime.bigint();
      for (let n = 0; n < calls; n++) sink += run(inputs[n % inputs.length]).value;
      times[i].push(Number(process.hrtime.bigint() - start) / calls);
    });
  }
  if (Number.isNaN(sink)) throw new Error('an answer was NaN');
  return times.map((list) => list.sort((a, b) => a - b)[list.length >> 1]);
}

/** Calls every export of the library on nothing, so that no function is measured on a fresh, unshared guard. */
export async function warmUp() {
  const library = await import('coating-math');
  for (let n = 0; n < 2000; n++) {
    for (const run of Object.values(library)) {
      try {
        run({ unit: 'mil' });
      } catch {
        // Refused, as it should be.
      }
    }
  }
}
