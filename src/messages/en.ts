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
  'nothing-for-texture':
    'Nothing is reckoned for what the valleys and pores of the floor drink: the volume is that of a smooth floor that takes nothing. Lay a test square or measure the texture.',
  'pulled-tight':
    'A coat pulled tight fills pores and leaves no film that a gauge could read; its thickness is an average. Mark the area that each cup must cover.',
};
