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
  'ratio-by-volume':
    'These are parts by volume. On a scale the ratio is another one: it takes the densities of the parts to know it.',
  'reading-moves-ratio':
    'One misread step of {graduation} puts {name} off ratio by up to {off}; the instructions allow {tolerance}. Weigh it, or mix a larger batch.',
  'too-small-to-measure':
    '{name} is too little to be measured on steps of {graduation}. Use a finer measure.',
  'off-graduations':
    'No batch up to {largest} has all its parts on the graduations of {graduation}; the nearest is off ratio by {off}.',
  'never-pool-leftovers':
    '{left} of {name} is left without its partner. Keep it sealed under its own name; leftovers of A and B are never poured together.',
  'only-as-instructed':
    'Only what the instructions allow may go into the mix, and no more of it: {name} can leave the floor soft.',
  'thinner-ignites':
    'Thinner vapour ignites: no flame, no sparks, no grinding, and air enough. The safety data sheet comes first.',
  'thinner-thins-film':
    'Thinner leaves the film: solids fall to {solidsByVolume}, so it is laid wetter, and {vocAdded} of solvent goes into the air. Legal limits hold for the thinned mix.',
  'parts-used-off-ratio':
    '{name} used differs by {difference} from what the batches should have taken, more than can be misread. Look for a soft place the size of a batch before it is coated over.',
  'groups-left-over':
    '{share} of the reactive groups of the {side} find no partner however long it cures: expect a softer or a brittle film.',
  'never-gels':
    'At this ratio the mix never becomes solid. It gels between {leastIndex} and {mostIndex} only.',
  'rule-of-thumb':
    'This time comes from a rule of thumb, half the time for each {step} warmer, between {from} and {to}. Times printed in the instructions of the product come first.',
  'between-rows':
    'The temperature lies between two rows of the table; the longer wait and the shorter limit of the two are taken.',
  'no-recoat-window':
    'The next coat must wait {shortest} where it is coldest and may wait no longer than {longest} where it is warmest: part of the floor has to be abraded first.',
  'heats-itself':
    'With no heat lost the mix warms by {rise}, enough to smoke, burn or char in a full pail. Keep the mass small and pour it out thin.',
  'heat-in-the-pail':
    'The pot life of {potLife} holds for {statedFor} and no more: a larger batch is faster, smokes and can burn. Pour it out at once; never cover or top up a pail that has begun to warm, spread it on sand outdoors.',
  'pot-life-too-short':
    'The batch takes {needed} from the start of mixing until it is down, and {usable} can be used. What helps: {remedies}.',
  'batch-below-least':
    'A batch of {batch} is below {least}, the least that can be measured in ratio. Make the batches equal, or mix the least and let the rest cure.',
  'no-stop-in-reach':
    'No joint, door or edge lies within the {reach} that can be placed in the time. Start later, place faster, or tape a line to stop at.',
  'last-strip-too-hard':
    'Placed in one go the last strip would wait {wait} for the regrind and be too hard after {tooHard}. Place it in lots.',
  'skin-and-eyes':
    'Resin and hardener burn eyes and skin and can cause allergy for life: goggles, gloves changed often, sleeves, water to wash the eyes at the table. The safety data sheets come first.',
  'no-pot-life-at-this-temperature':
    'The instructions of {material} give no pot life at {temperature}, so no batches are planned for it. Bring the material to a temperature that they name; nothing is carried on beyond it.',
  'moving-crack':
    'A crack that moves tears whatever bridges it. Fill it with a material that gives ({volume}) and carry it through the floor as a joint; who designed the slab decides which cracks move.',
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
  'profile-is-advice':
    'Classes {from} to {to} are the advice of a guideline, quoted from memory. What the instructions of the product ask for comes first.',
  'profile-not-advised':
    'The guideline names no system of {thickness}. Ask the maker of the product which profile it needs.',
  'profile-rougher':
    'The floor is class {class}, rougher than the {from} to {to} advised: its peaks may show or stand out of the film, and its valleys take more material.',
  'profile-smoother':
    'The floor is class {class}, smoother than the {from} to {to} advised: the coat has little to hold on to. Prepare it further, or ask the maker of the product.',
  'square-stands-for-its-place':
    'A test square stands for floor like that under it. Lay it where the floor is at its thirstiest, and another where the concrete changes.',
};
