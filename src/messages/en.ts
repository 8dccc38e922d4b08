import type { CautionCode } from '../core/caution.ts';

/** The English words for every caution. A name in braces stands for the parameter of that name. */
export const en: Readonly<Record<CautionCode, string>> = {
  'deduction-left-in':
    '{name}: {area} is not coated, but is left in the net area because each is below the deduct-from size.',
  'outline-unknown':
    'The outline of {name} does not follow from its sizes, so perimeter and edges are not answered. Measure it and give it as outline.',
  'leftover-material':
    '{leftover} will be left of {name}. Keep it sealed and in part pairs; never pool what is left of A and B.',
};
