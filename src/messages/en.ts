import type { CautionCode } from '../core/caution.ts';

/** The English words for every caution. A name in braces stands for the parameter of that name. */
export const en: Readonly<Record<CautionCode, string>> = {
  'deduction-left-in':
    '{name}: {area} is not coated, but is left in the net area because each is below the deduct-from size.',
  'moving-crack':
    'A crack that moves tears whatever bridges it. Fill it with a material that gives ({volume}) and carry it through the floor as a joint; who designed the slab decides which cracks move.',
  'outline-unknown':
    'The outline of {name} does not follow from its sizes, so perimeter and edges are not answered. Measure it and give it as outline.',
  'below-nominal': 'The layers reach {reached} of the nominal thickness.',
  'damp-sand':
    'The sand may hold more water than the resin allows ({moisture} on dry mass). Damp sand foams with isocyanates and weakens the bond of epoxies: dry it or use other sand.',
  'lift-too-thin':
    'Lifts of {each} are thinner than the material allows. Take fewer and thicker ones within its limits, or another material.',
  'mortar-stays-open':
    'The resin does not fill the voids of the sand ({missing} short). The mortar stays open, weaker, and drinks more of the next coat.',
  'sand-outruns-resin':
    'Grains make up to {share} of the layer by volume, more than resin can surround (about 64 %). The seal has to fill what is left.',
  'swept-sand-again':
    'Sand that was swept up may be thrown again once, dry, clean and screened; never into the last broadcast nor into a blend of colours.',
  'thrown-sand-dust':
    'Throwing and sweeping quartz sand raises dust that scars the lungs. Wear a respirator, use a vacuum, never sweep dry; local rules on silica come first.',
  'nothing-for-texture':
    'Nothing is reckoned for what the valleys and pores of the floor drink: the volume is that of a smooth floor that takes nothing. Lay a test square or measure the texture.',
  'profile-is-advice':
    'Classes {from} to {to} are the advice of a guideline, quoted from memory. What the instructions of the product ask for comes first.',
  'profile-not-advised':
    'The guideline names no system of {thickness}. Ask the maker of the product which profile it needs.',
  'profile-rougher':
    'The floor is class {class}, rougher than the {from} to {to} advised: its peaks may show or stand out of the film, and its valleys take more material.',
  'profile-smoother':
    'The floor is class {class}, smoother than the {from} to {to} advised: the coat has little to hold on to. Prepare it further, or ask the maker of the product.',
  'pulled-tight':
    'A coat pulled tight fills pores and leaves no film that a gauge could read; its thickness is an average. Mark the area that each cup must cover.',
  'square-stands-for-its-place':
    'A test square stands for floor like that under it. Lay it where the floor is at its thirstiest, and another where the concrete changes.',
  'leftover-material':
    '{leftover} will be left of {name}. Keep it sealed and in part pairs; never pool what is left of A and B.',
};
