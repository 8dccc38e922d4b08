import type { CautionCode } from '../core/caution.ts';

/** The English words for every caution. A name in braces stands for the parameter of that name. */
export const en: Readonly<Record<CautionCode, string>> = {
  condensation:
    'The floor at {surface} is only {margin} above the dew point of {dewPoint}; {limit} are asked for. Moisture may settle on the floor or the wet film and spoil the bond. Do not lay until the margin is there.',
  'dew-margin-undecided':
    'The margin over the dew point reads {margin} against {limit}, and the instruments may be off by {uncertainty}. That is no pass: measure better, or wait.',
  'dew-margin-now-only':
    'The margin over the dew point holds for this moment and place only. The film stays sensitive to moisture until it has cured far enough: look at the hours after laying as well, and follow the product instructions.',
  'leftover-material':
    '{leftover} will be left of {name}. Keep it sealed and in part pairs; never pool what is left of A and B.',
  'deduction-left-in':
    '{name}: {area} is not coated, but is left in the net area because each is below the deduct-from size.',
  'outline-unknown':
    'The outline of {name} does not follow from its sizes, so perimeter and edges are not answered. Measure it and give it as outline.',
};
