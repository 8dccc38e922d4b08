import { expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import { cautionText } from '../../src/messages/cautionText.ts';
import { solventData } from '../../src/safety/solventData.ts';
import { cautionsFor, dilutionAirForExplosiveLimit, vapourBuildUp } from '../../src/safety/index.ts';
import { q } from '../support/quantity.ts';

const words = ({ cautions }: { readonly cautions: readonly Parameters<typeof cautionText>[0][] }) =>
  cautions.map(cautionText).join(' ');

it('a small share of the explosive limit says that the air harms all the same', () => {
  const text = words(
    vapourBuildUp({
      room: q(10000, 'ft3'),
      airflow: q(1000, 'ft3/min'),
      mixingFactor: 1,
      vapour: q(15, 'ft3'),
      evaporationTime: q(30, 'min'),
      elapsed: q(15, 'min'),
      lowerExplosiveLimit: q(1.1, '%'),
      unit: 'ppm',
    }),
  );
  expect(text).toContain('4.32 %');
  expect(text).toContain('exposure limit');
});

it('air against fire says that it is not air to breathe', () => {
  const air = dilutionAirForExplosiveLimit({
    vapour: q(30.4, 'ft3'),
    lowerExplosiveLimit: q(1.1, '%'),
    keepBelow: q(10, '%'),
    evaporationTime: q(1, 'h'),
    units: { volume: 'ft3', flow: 'ft3/min' },
  });
  expect(words(air)).toContain('exposure limit');
  expect(words(air)).toContain('fan that cannot ignite it');
});

it('no solvent on record ignites at less than the words allow for', () => {
  expect(solventData({ solvent: 'naphtha' }).lowestExplosiveLimit.value).toBeLessThan(1.1);
  const text = words(cautionsFor({ tasks: ['thinning'] }));
  expect(text).toContain('that of toluene from 1.1 % in air, of others from less');
  expect(words(solventData({ solvent: 'naphtha' }))).toContain('that of naphtha from 0.9 % in air');
});

it('no advice makes a hazard of its own', () => {
  expect(words(cautionsFor({ tasks: ['heating'] }))).toContain('never fire it near solvent vapour');
  const rest = {
    code: 'batch-below-least',
    severity: 'caution',
    params: { batch: q(0.2, 'l'), least: q(1, 'l') },
    source: 'common-practice',
  } as const;
  expect(cautionText(rest)).toContain('spread out the rest');
});

it('an unknown code is refused in few words', () => {
  const unknown = attempt(cautionText, {
    code: 'toString',
    severity: 'note',
    params: {},
    source: 's',
  } as never);
  expect(unknown.ok ? [] : unknown.issues).toMatchObject([
    { code: 'out-of-range', path: ['code'], expected: 'the code of a caution of this library' },
  ]);
});
