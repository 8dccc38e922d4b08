/** How the grip of a floor is measured. The scales differ, and no figure of one becomes one of another. */
import type { Limits } from '../core/limits.ts';

/** A method with its condition. */
export type SlipMethod = 'ANSI A326.3 wet' | 'pendulum wet' | 'pendulum dry' | 'ASTM D2047';

/** What each method can show, and its id in the register of sources. */
export const SLIP_METHODS: Readonly<
  Record<SlipMethod, { readonly limits: Limits; readonly source: string }>
> = {
  'ANSI A326.3 wet': {
    limits: { above: 0, below: 2.000000000002, words: ' above 0 and up to 2' },
    source: 'ansi-a326-3',
  },
  'pendulum wet': {
    limits: { above: -5e-324, below: 150.0000000001, words: ' from 0 to 150' },
    source: 'hse-pendulum',
  },
  'pendulum dry': {
    limits: { above: -5e-324, below: 150.0000000001, words: ' from 0 to 150' },
    source: 'hse-pendulum',
  },
  'ASTM D2047': {
    limits: { above: 0, below: 2.000000000002, words: ' above 0 and up to 2' },
    source: 'astm-d2047',
  },
};
