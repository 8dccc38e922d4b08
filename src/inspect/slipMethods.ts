/** How the grip of a floor is measured. The scales differ, and no figure of one becomes one of another. */
import type { Cited } from '../core/caution.ts';
import type { Limits } from '../core/limits.ts';

/** A method with its condition. */
export type SlipMethod = 'ANSI A326.3 wet' | 'pendulum wet' | 'pendulum dry' | 'ASTM D2047';

export const PENDULUM = { source: 'hse-pendulum', status: 'memory' } as const;
export const D2047 = { source: 'astm-d2047', status: 'memory' } as const;

/** What each method can show, and its source. */
export const SLIP_METHODS: Readonly<Record<SlipMethod, { readonly limits: Limits; readonly cited: Cited }>> =
  {
    'ANSI A326.3 wet': {
      limits: { above: 0, below: 2.000000000002, words: ' above 0 and up to 2' },
      cited: { source: 'ansi-a326-3' },
    },
    'pendulum wet': {
      limits: { above: -5e-324, below: 150.0000000001, words: ' from 0 to 150' },
      cited: PENDULUM,
    },
    'pendulum dry': {
      limits: { above: -5e-324, below: 150.0000000001, words: ' from 0 to 150' },
      cited: PENDULUM,
    },
    'ASTM D2047': {
      limits: { above: 0, below: 2.000000000002, words: ' above 0 and up to 2' },
      cited: D2047,
    },
  };
