/** A hazard is raised where the work that creates it is computed, always and as a danger. */
import { expect, it } from 'vitest';
import type { Caution } from '../../src/core/caution.ts';
import { attempt } from '../../src/core/attempt.ts';
import { functions, rows } from '../support/library.ts';

it.each([
  ['aggregate.broadcast', 'thrown-sand-dust'],
  ['aggregate.mortarYield', 'thrown-sand-dust'],
  ['batch.batchClock', 'skin-and-eyes'],
  ['batch.largestBatch', 'heat-in-the-pail'],
  ['batch.poreCoatLots', 'half-cured-dust'],
  ['climate.heaterExhaust', 'carbon-monoxide'],
  ['cure.adiabaticRise', 'heats-itself'],
  ['inspect.pullOffCheck', 'dolly-under-load'],
  ['mix.isocyanateNeeded', 'isocyanate-in-the-air'],
  ['moisture.calciumChlorideTest', 'silica-dust-from-testing'],
  ['moisture.inSlabHumidityTest', 'silica-dust-from-testing'],
  ['safety.checkPailMass', 'mixed-resin-heats'],
  ['safety.grindingDust', 'dust-removed'],
  ['safety.silicaTable1', 'silica-dust'],
])('%s always warns of %s', (name, code) => {
  const fn = functions.get(name) as (input: unknown) => { readonly cautions: readonly Caution[] };
  const answers = rows
    .filter((row) => row.function === name)
    .map((row) => attempt(fn, row.given))
    .flatMap((answer) => (answer.ok ? [answer.value] : []));
  expect(answers.length).toBeGreaterThan(0);
  for (const { cautions } of answers) {
    expect(cautions.find((caution) => caution.code === code)?.severity).toBe('danger');
  }
});

it.each([
  ['mix.gelPoint', 'never-gels'],
  ['mix.gelPoint', 'gels-at-no-ratio'],
  ['mix.checkRatio', 'mix-off-ratio'],
  ['mix.batchWithAdditions', 'only-as-instructed'],
])('%s calls %s a danger, as its words tell of harm', (name, code) => {
  const fn = functions.get(name) as (input: unknown) => { readonly cautions: readonly Caution[] };
  const raised = rows
    .filter((row) => row.function === name)
    .map((row) => attempt(fn, row.given))
    .flatMap((answer) => (answer.ok ? answer.value.cautions : []))
    .filter((caution) => caution.code === code);
  expect(new Set(raised.map(({ severity }) => severity))).toEqual(new Set(['danger']));
});
