// What the guard costs: each film formula against its bare form, by hand, with the same input object. `npm run bench`
import * as film from 'coating-math/film';
import { medians, warmUp } from './ratio.mjs';

const LIMIT = 4;
const FT2_MIL_PER_GAL = 9625 / 6;
const each = (make) => Array.from({ length: 64 }, (_, i) => make(i + 1));

const cases = {
  spreadRate: {
    bare: ({ area, volume }) => ({ value: area.value / volume.value, unit: 'ft2/usgal' }),
    inputs: each((i) => ({
      area: { value: 80 + i, unit: 'ft2' },
      volume: { value: i, unit: 'usgal' },
      unit: 'ft2/usgal',
    })),
  },
  wetThickness: {
    bare: ({ spreadRate }) => ({ value: FT2_MIL_PER_GAL / spreadRate.value, unit: 'mil' }),
    inputs: each((i) => ({ spreadRate: { value: 100 + i, unit: 'ft2/usgal' }, unit: 'mil' })),
  },
  spreadRateForThickness: {
    bare: ({ wetThickness }) => ({ value: FT2_MIL_PER_GAL / wetThickness.value, unit: 'ft2/usgal' }),
    inputs: each((i) => ({ wetThickness: { value: i, unit: 'mil' }, unit: 'ft2/usgal' })),
  },
  dryThickness: {
    bare: ({ wetThickness, solidsByVolume }) => ({
      value: (wetThickness.value * solidsByVolume.value) / 100,
      unit: 'mil',
    }),
    inputs: each((i) => ({
      wetThickness: { value: i, unit: 'mil' },
      solidsByVolume: { value: 60, unit: '%' },
      unit: 'mil',
    })),
  },
  wetThicknessForDry: {
    bare: ({ dryThickness, solidsByVolume }) => ({
      value: (dryThickness.value / solidsByVolume.value) * 100,
      unit: 'mil',
    }),
    inputs: each((i) => ({
      dryThickness: { value: i, unit: 'mil' },
      solidsByVolume: { value: 60, unit: '%' },
      unit: 'mil',
    })),
  },
  volumeNeeded: {
    bare: ({ area, wetThickness, textureDepth, residue, toolLoad }) => ({
      value:
        (area.value * (wetThickness.value + textureDepth.value)) /
          FT2_MIL_PER_GAL /
          (1 - residue.value / 100) +
        toolLoad.value,
      unit: 'usgal',
    }),
    inputs: each((i) => ({
      area: { value: 100 + i, unit: 'ft2' },
      wetThickness: { value: 16, unit: 'mil' },
      textureDepth: { value: 1, unit: 'mil' },
      residue: { value: 3, unit: '%' },
      toolLoad: { value: 0.25, unit: 'usgal' },
      unit: 'usgal',
    })),
  },
};

await warmUp();
let over = 0;
for (const [name, { bare, inputs }] of Object.entries(cases)) {
  const guarded = film[name];
  for (const input of inputs) {
    const [got, want] = [guarded(input).value, bare(input).value];
    if (Math.abs(got - want) > 1e-12 * want) throw new Error(`${name}: ${got} is not ${want}`);
  }
  const [with_, without] = medians([guarded, bare], inputs);
  if (with_ > LIMIT * without) over++;
  console.log(
    `${name.padEnd(24)}${with_.toFixed(1).padStart(7)} ns ${without.toFixed(1).padStart(7)} ns bare  ratio ${(with_ / without).toFixed(2)}`,
  );
}
process.exit(over ? 1 : 0);
