import type { CautionCode } from '../core/caution.ts';

/** The English words for every caution. A name in braces stands for the parameter of that name. */
export const en: Readonly<Record<CautionCode, string>> = {
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
    'Thinner leaves the film: solids fall to {solidsByVolume}, so it is laid wetter, and {vocAdded} of solvent goes into the air. Only as much of it as the instructions allow; legal limits hold for the thinned mix.',
  'parts-used-off-ratio':
    '{name} used differs by {difference} from what the batches should have taken, more than can be misread. Look for a soft place the size of a batch before it is coated over.',
  'resin-left-over':
    '{share} of the reactive groups of the resin find no partner however long it cures: too little hardener leaves a soft or brittle film.',
  'hardener-left-over':
    '{share} of the reactive groups of the hardener find no partner however long it cures: too much of it leaves a soft film that takes up water.',
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
    'The batch takes {needed} from the start of mixing until it is down, and {usable} can be used. What helps: a smaller batch, more hands, cooler material, faster mixing, a slower hardener where the instructions have one.',
  'batch-below-least':
    'A batch of {batch} is below {least}, the least that can be measured in ratio. Make the batches equal, or mix the least and let the rest cure.',
  'no-stop-in-reach':
    'No joint, door or edge lies within the {reach} that can be placed in the time. Start later, place faster, or tape a line to stop at.',
  'last-strip-too-hard':
    'Placed in one go the last strip would wait {wait} for the regrind and be too hard after {tooHard}. Place it in lots.',
  'skin-and-eyes':
    'Resin and hardener burn eyes and skin and can cause allergy for life: goggles, gloves changed often, sleeves, water to wash the eyes at the table. The safety data sheets come first.',
  'leftover-material':
    '{leftover} will be left of {name}. Keep it sealed and in part pairs; never pool what is left of A and B.',
};
