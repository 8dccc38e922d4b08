/** Agreement with GNU units: with its kept answers, and with the program where the machine has it. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { convert } from '../../src/units/convert.ts';
import { asked, askGnuUnits, gnuPairs, gnuVersion } from '../support/gnuUnits.ts';

const kept = JSON.parse(readFileSync('tests/units/gnu-units.json', 'utf8')) as {
  version: string;
  answers: Record<string, number>;
};
const version = gnuVersion();
const live = version === undefined ? undefined : askGnuUnits();

describe.each(gnuPairs)('$from to $to', (pair) => {
  const { name, from, to } = pair;
  const ours = convert({ quantity: { value: asked(pair), unit: from as 'm' }, unit: to as 'm' }).value;
  const agrees = (theirs: number | undefined) => {
    expect(theirs).toBeTypeOf('number');
    // Their chains of definitions round at every link; temperatures go through kelvins.
    const slack = name === 'temperature' ? 2e-12 : 1e-14 * Math.abs(ours);
    expect(Math.abs(ours - Number(theirs))).toBeLessThanOrEqual(slack);
  };

  it('agrees with the kept answer', () => {
    agrees(kept.answers[`${from} ${to}`]);
  });
  it.runIf(live)('agrees with the program', () => {
    agrees(live?.[`${from} ${to}`]);
  });
});

it.runIf(version === kept.version)('the kept answers are those of the program', async () => {
  const text = `${JSON.stringify({ version, answers: live }, null, 2)}\n`;
  await expect(text).toMatchFileSnapshot('gnu-units.json');
});
