import type { CautionCode } from '../core/caution.ts';

/** The English words for every caution. A name in braces stands for the parameter of that name. */
export const en: Readonly<Record<CautionCode, string>> = {
  'deduction-left-in':
    '{name}: {area} is not coated, but is left in the net area because each is below the deduct-from size.',
  'moving-crack':
    'A crack that moves tears whatever bridges it. Fill it with a material that gives ({volume}) and carry it through the floor as a joint; who designed the slab decides which cracks move.',
  'outline-unknown':
    'The outline of {name} does not follow from its sizes, so perimeter and edges are not answered. Measure it and give it as outline.',
  'nothing-for-texture':
    'Nothing is reckoned for what the valleys and pores of the floor drink: the volume is that of a smooth floor that takes nothing. Lay a test square or measure the texture.',
  'pulled-tight':
    'A coat pulled tight fills pores and leaves no film that a gauge could read; its thickness is an average. Mark the area that each cup must cover.',
  'leftover-material':
    '{leftover} will be left of {name}. Keep it sealed and in part pairs; never pool what is left of A and B.',
};
