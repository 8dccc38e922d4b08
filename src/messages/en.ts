import type { CautionCode } from '../core/caution.ts';

/**
 * The English words for every caution. A name in braces stands for the parameter of that name; behind a colon stand the
 * words that follow it where it is one, and where it is another number.
 */
export const en: Readonly<Record<CautionCode, string>> = {
  'beyond-fitted-points':
    'The line is asked for at {at}, outside its points from {first} to {last}. Nothing shows that it goes on straight: what dries, cures or wears bends.',
  'mean-not-places':
    'The interval is about the mean. Single places may lie far outside it, and a floor often fails by its worst place.',
  'normal-readings-assumed':
    'The interval holds for independent readings that scatter as the normal distribution does. Look at them in a plot first: two areas of different film, or one end cut off, spoil it.',
  'beyond-limit':
    'The measured {measured} is beyond the limit of {limit} by at least the guard band of {guardBand}; the true value is within the limits with a probability of {probability}.',
  'inside-guard-band':
    'The measured {measured} is within the guard band of {guardBand} about the limit of {limit}; the true value is within the limits with a probability of {probability}. It is neither accepted nor rejected: measure better, or agree beforehand who bears the doubt.',
  'formula-bends':
    'The formula bends within the uncertainty of its inputs: {first} by first order, {second} with the terms of second order. Do not rely on the smaller one.',
  'uncertainty-leaves-range':
    'The uncertainty of an input reaches beyond the valid range of the formula, so whether it bends there is not known. The true value cannot lie out there: the distribution is not normal.',
  condensation:
    'The floor at {surface} is only {margin} above the dew point of {dewPoint}, instead of {limit}. Moisture may settle on the floor or the wet film and spoil the bond. Do not lay until the margin is there.',
  'dew-margin-undecided':
    'The margin over the dew point reads {margin} against {limit}, and the instruments may be off by {uncertainty}. That is no pass: measure better, or wait.',
  'dew-margin-now-only':
    'The margin over the dew point holds for this moment and place only. The film stays sensitive to moisture until it has cured far enough: look at the hours after laying as well, and follow the product instructions.',
  'air-not-within-limit':
    'The air at {measured} is not clearly within the limit of {limit} in the product instructions.',
  'humidity-not-within-limit':
    'The relative humidity of {measured} is not clearly within the limit of {limit} in the product instructions.',
  'floor-not-within-limit':
    'The floor at {measured} is not clearly within the limit of {limit} in the product instructions.',
  'material-not-within-limit':
    'The material at {measured} is not clearly within the limit of {limit} in the product instructions.',
  outgassing:
    'The slab warmed by {change} in {elapsed}. Air in its pores grows, leaves through the fresh film and blows bubbles and craters. Concrete practice lays the first coats on a falling or steady slab.',
  'rising-suits-condensation':
    'For condensation a rising surface is the better one, and text written for steel asks for it. The two rules contradict each other; the product instructions decide which one weighs more.',
  'surface-not-rising':
    'The surface is not rising ({change} in {elapsed}). Text written for steel asks for a rising surface, because a falling one comes closer to the dew point: watch the margin through the hours after laying.',
  'falling-suits-outgassing':
    'A falling slab draws air into its pores, which suits the first coats on concrete as long as the margin over the dew point holds.',
  'trend-undecided':
    'The change of {change} in {elapsed} is smaller than the thermometer can tell. Nobody can say whether the slab is rising or falling: read it again later.',
  'no-laying-window':
    'In these readings there is no time at which the film could be laid and be through before the margin over the dew point is lost. Heat or dry the room without open flames, take a faster product, or wait.',
  'window-on-rising-slab':
    'The slab warms, or may be warming, while a window is open. Air in its pores then blows bubbles and craters through the fresh film, and concrete practice lays the first coats on a falling or steady slab. The product instructions decide.',
  'window-on-falling-slab':
    'The slab does not clearly warm all through the windows. Text written for steel asks for a rising surface, the opposite of concrete practice, because a falling one comes closer to the dew point. The product instructions decide.',
  'gap-in-readings':
    'Readings further apart than {longestGap} leave {gaps:gap|gaps}. Nothing is known in a gap, so it counts as closed.',
  'measure-before-laying':
    'Windows out of forecasts and earlier readings are for planning. Measure air, humidity and floor again before laying and about every four hours after, and follow the product instructions.',
  'carbon-monoxide':
    'A fired heater without a flue gives off carbon monoxide, which kills without a smell; the US limit is {limit} as a mean of eight hours. Keep it out of the room or let its exhaust out, ventilate, use a monitor, never fire it near solvent vapour, and follow its instructions.',
  'blush-from-heater':
    'Burning {burnt} of {fuel} in the room leaves {water} of water and {carbonDioxide} of carbon dioxide. Both can turn a curing amine film white, greasy and without bond. Use indirect or electric heat.',
  'moisture-over-limit':
    'Test {test} reads {measured}, over the limit of {limit}. One wet place is enough to lift a floor: do not coat without a barrier that bears it, or wait and test again.',
  'moisture-undecided':
    'Whether the floor is within the limit of {limit} is not decided: test {test} reads {measured}, and what leaves it open is {reason}.',
  'doubtful-reading':
    'Test {test} reads {measured}, not clearly within the limit of {limit}, but was not done by the book. The floor may be that wet: repeat this test.',
  'too-few-tests':
    '{usable:test counts|tests count} and {testsNeeded:is|are} asked for on a floor of this size.',
  'exposure-outside-window':
    '{tests:dish|dishes} stood outside the window of 60 to 72 hours (test {places}). Such a dish decides nothing: repeat it.',
  'equilibration-too-short':
    '{tests:reading was|readings were} taken before the humidity had come to rest (test {places}). Such a reading decides nothing: read again later.',
  'probe-too-shallow':
    '{tests:hole is|holes are} not deep enough (test {places}). A shallow probe reads low, so below the limit it decides nothing: drill deeper.',
  'worst-test-governs': 'The worst test governs, never the mean of all: a floor fails where it is wettest.',
  'service-climate':
    'Moisture tests count only where the building is closed and has been at its service climate for at least 48 hours.',
  'dish-conditions':
    'Where the service climate is not to be had: air at {air} ± {airEitherWay} and {humidity} ± {humidityEitherWay} relative humidity, held for {heldFor} before the test and through it. A dish stands on a square of {side} made bare and left open for {openFor}.',
  'box-heating-off': 'Heating in the floor stays off from {before} before the reading.',
  'methods-not-converted':
    'Each test method has limits of its own. No result of one is converted into another, and the limits are those in the product instructions.',
  'silica-dust-from-testing':
    'Drilling and grinding concrete gives off silica dust, which scars the lungs for life; the US rule begins at {actionLevel} as a mean of eight hours. Extract it at the tool, and wear a respirator.',
  'sheet-shows-moisture':
    '{wet:sheet shows|sheets show} moisture. Measure the slab before anything is laid on it.',
  'dwell-too-short':
    '{tests:sheet|sheets} lay for less than {leastDwell}. Dry, such a sheet decides nothing.',
  'sheet-is-no-measurement':
    'A sheet without moisture is weak evidence and no number: it shows only what came up in that time and climate. Its film is {film} thick and covers a square of {side}.',
  'alkalinity-not-within-limit':
    'A pH of {measured} is not clearly within the limit of {limit} in the product instructions.',
  'alkalinity-not-corrected':
    'A pH is judged as it was read. It is not corrected for the water of the test, which moves it by far less than a logarithm would say.',
  'barrier-needed':
    'The slab is over what the flooring system bears on its own. A moisture barrier is needed, or another system, or time to dry.',
  'barrier-undecided':
    'Whether the flooring system bears this slab on its own is not decided by these tests. Plan with a barrier, or test again and better.',
  'beyond-barrier':
    'The slab is not clearly within what the barrier itself bears. Ask its maker in writing before going on.',
  'no-barrier-limit':
    'The slab is not clearly within what the flooring system bears, and no limit of the barrier was given for: {without}. Whether the barrier bears that is unknown; look it up in its instructions.',
  'fit-by-moisture-only':
    'This speaks of moisture alone. Surface, soundness, climate and dew point are judged apart, and the product instructions come first.',
  'drying-rules-disagree':
    '{rules} published rules give these times and disagree. They are for planning, start when the building is closed and heated, and never replace a test or make a date.',
  'no-vapour-retarder':
    'Without a vapour retarder below, a slab may never dry enough, and what is measured today can rise again under a floor.',
  'permeance-not-within-limit':
    'A permeance of {measured} is not clearly within the limit of {limit}. More vapour may reach the floor than it bears: ask for a thicker or a tighter membrane.',
  'permeance-by-its-method':
    'A permeance belongs to its test: the dry method reads lower than the water method. Hold it only against a limit for the same one, at the thickness that is laid.',
  'leftover-material':
    'Up to {leftover} will be left of {name}. Keep it sealed and in part pairs; never pool what is left of A and B.',
  'deduction-left-in':
    '{name}: {area} is not coated, but is left in the net area because each is below the deduct-from size.',
  'edges-of-each-piece':
    'Perimeter and edges are those of all {pieces} pieces together. Where pieces join, or a wall or a cove stands on the outline, the edge is in them twice: give what is open.',
  'outline-unknown':
    'The outline of {name} does not follow from its sizes, so perimeter and edges are not answered. Measure it and give it as outline.',
  'nothing-for-texture':
    'Nothing is reckoned for what the valleys and pores of the floor drink: the volume is that of a smooth floor that takes nothing. Lay a test square or measure the texture.',
  'pulled-tight':
    'A coat pulled tight fills pores and leaves no film that a gauge could read; its thickness is an average. Mark the area that each cup must cover.',
  'ratio-by-volume':
    'These are parts by volume. On a scale the ratio is another one: it takes the densities of the parts to know it.',
  'reading-moves-ratio':
    'One misread step of {graduation} puts {name} off ratio by up to {off}; the instructions allow {tolerance}. Weigh the parts, or use a finer measure.',
  'reading-not-judged':
    'One misread step of {graduation} puts {name} off ratio by up to {off}, and no tolerance was given to judge it by. Look up in the instructions how far the mix may be off; where that is less, weigh the parts or use a finer measure.',
  'marks-off-ratio':
    'Even read exactly, the marks on steps of {graduation} put {name} off ratio by {off}; the instructions allow {tolerance}. Mix a batch whose parts fall on steps, weigh the parts, or use a finer measure.',
  'too-small-to-measure':
    'Steps of {graduation} are too coarse to measure {name} by: pour nothing to that mark. Weigh the parts, or use a finer measure or a narrower pail.',
  'off-graduations':
    'No batch up to {largest} has all its parts on the graduations of {graduation}; the nearest is off ratio by {off}.',
  'never-pool-leftovers':
    '{left} of {name} is left without its partner. Keep it sealed under its own name; leftovers of A and B are never poured together, where they heat themselves, smoke and can burn.',
  'only-as-instructed':
    'Only what the instructions allow may go into the mix, and no more of it: {mass} of {name} can leave the floor soft. Thinner ignites, powder raises dust, and an accelerator with a peroxide catches fire: read the safety data sheet of what is added.',
  'thinner-ignites':
    'Solvent vapour ignites, that of {solvent} from {lowerExplosiveLimit} in air, of others from less: no flame, no sparks, no grinding, and fresh air by the numbers of the solvent at hand.',
  'thinner-thins-film':
    'Thinner leaves the film: solids fall to {solidsByVolume}, so it is laid wetter, and {vocAdded} of solvent goes into the air. Only as much of it as the instructions allow; legal limits hold for the thinned mix.',
  'parts-used-off-ratio':
    '{name} used differs by {difference} from what the batches should have taken, more than can be misread. Look for a soft place the size of a batch before it is coated over.',
  'resin-left-over':
    '{share} of the reactive groups of the resin find no partner however long it cures: too little hardener leaves a soft or brittle film. Mix in the ratio of the instructions, which may ask for an excess on purpose.',
  'hardener-left-over':
    '{share} of the reactive groups of the hardener find no partner however long it cures: too much of it leaves a soft film that takes up water. Mix in the ratio of the instructions, which may ask for an excess on purpose.',
  'never-gels':
    'At this ratio the mix never becomes solid. It gels between {leastIndex} and {mostIndex} only. Do not lay it: what lies already stays wet, harms skin and has to be taken up.',
  'gels-at-no-ratio':
    'With {resinFunctionality} groups on a molecule of the resin and {hardenerFunctionality} on one of the hardener the mix becomes solid at no ratio. Do not lay it: what lies already stays wet, harms skin and has to be taken up.',
  'mix-off-ratio':
    '{part} is off ratio by {off}; the instructions allow {tolerance}. Such a mix stays soft or brittle and keeps parts that harm skin: do not lay it, and look for what lies already before it is coated over.',
  'mix-ratio-undecided':
    '{part} reads off ratio by {off} against {tolerance}, and the readings may be off by {uncertainty}. That is no pass: weigh the parts or read a finer measure, and look whether it cures before it is coated over.',
  'water-foams-isocyanate':
    '{water} of water takes up isocyanate and sets {carbonDioxide} of carbon dioxide free: the floor foams and blisters, and a closed pail can burst. Keep out water, damp sand and damp tools, and never close a pail that has become wet.',
  'rule-of-thumb':
    'This time comes from a rule of thumb, half the time for each {step} warmer, between {from} and {to}. Times printed in the instructions of the product come first.',
  'between-rows':
    'The temperature lies between two rows of the table; the longer wait and the shorter limit of the two are taken.',
  'stand-time-outlasts-pot-life':
    'The mix must stand for {induction} before use, and its pot life is over after {potLife}: no time is left to use it. What helps: cooler material, or a slower hardener where the instructions have one.',
  'no-recoat-window':
    'The next coat must wait {shortest} where it is coldest and may wait no longer than {longest} where it is warmest: part of the floor has to be abraded first.',
  'heats-itself':
    'With no heat lost the mix warms by {rise}, enough to smoke, burn or char in a full pail. Keep the mass small and pour it out thin.',
  'heat-in-the-pail':
    'The pot life of {potLife} holds for {statedFor} and no more: a larger batch is faster, smokes and can burn. Pour it out at once; never cover or top up a pail that has begun to warm, spread it on sand outdoors.',
  'pot-life-too-short':
    'The batch takes {needed} from the start of mixing until it is down, and {usable} can be used. What helps: a smaller batch, more hands, cooler material, faster mixing, a slower hardener where the instructions have one.',
  'no-time-to-place':
    'Measuring, mixing, standing and carrying take {needed}, and {usable} can be used: no time is left to place a batch of any size. What helps: cooler material, faster mixing, a slower hardener where the instructions have one.',
  'batch-below-measuring-step':
    'The largest batch is {largest}, less than one measuring step of {step}: none can be measured. Measure in finer steps.',
  'batch-below-least':
    'A batch of {batch} is below {least}, the least that can be measured in ratio. Make the batches equal, or mix the least and spread out the rest to cure: left in the pail it heats itself.',
  'wet-edge-closes':
    'A strip along the front takes {strip}, and the edge may wait {limit}: it closes first, or may, and leaves a lap mark. Narrow the front to {widestFront} by a joint or a taped line, lay {rateNeeded}, or wait for a cooler floor.',
  'no-stop-in-reach':
    'No joint, door or edge lies within the {reach} that can be placed in the time. Start later, place faster, or tape a line to stop at.',
  'last-strip-too-hard':
    'Placed in one go the last strip would wait {wait} for the regrind and be too hard after {tooHard}. Place it in lots.',
  'skin-and-eyes':
    'Resin and hardener burn eyes and skin and can cause allergy for life: goggles, gloves changed often, sleeves, water to wash the eyes at the table.',
  'no-pot-life-at-this-temperature':
    'The instructions of {material} give no pot life at {temperature}, so no batches are planned for it. Bring the material to a temperature that they name; nothing is carried on beyond it.',
  'product-not-named':
    'The plan does not know what {material} is made of. Isocyanates, solvent, peroxides or cement in it are hazards that it cannot name: read its safety data sheet before a pail is opened, and name its product class to see what is on record.',
  'zone-without-coat': 'No coat covers {zone}: nothing is mixed or bought for it.',
  'coat-before-one-beneath':
    '{coat} is begun at {start}, before {beneath} under it is all down at {down}. Coats are listed from the slab up: list it where it belongs, or begin it later, within the recoat window of the instructions.',
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
    'Pouring, throwing and sweeping quartz sand raises dust that scars the lungs for life; the US rule begins at {actionLevel} as a mean of eight hours. Take low-dust sand, wear a respirator, use a vacuum, never sweep dry.',
  'comparator-is-for-steel':
    'Segment {segment} of the comparator stands for blasted steel; it says nothing of concrete. What is printed with the comparator comes first.',
  'profile-is-advice':
    'Classes {from} to {to} are the advice of a guideline. What the instructions of the product ask for comes first.',
  'profile-not-advised':
    'The guideline names no system of {thickness}. Ask the maker of the product which profile it needs.',
  'profile-rougher':
    'The floor is class {class}, rougher than the {from} to {to} advised: its peaks may show or stand out of the film, and its valleys take more material.',
  'profile-smoother':
    'The floor is class {class}, smoother than the {from} to {to} advised: the coat has little to hold on to. Prepare it further, or ask the maker of the product.',
  'square-stands-for-its-place':
    'A test square stands for floor like that under it. Lay it where the floor is at its thirstiest, and another where the concrete changes.',
  'solvent-in-the-air':
    '{emitted} of solvent goes into the air. Its vapour can explode, that of toluene from {lowerExplosiveLimit} in air and others from less, and harms at far less: no flame, sparks or grinding near it, fresh air by the numbers of the solvent at hand, and nobody in pits and closed rooms.',
  'exempt-solvent-ignites':
    '{exempt} of solvent in this mix is not counted by the rule and not in these figures. It goes into the air all the same, and most such solvents ignite and harm like any other: no flame, no sparks, and fresh air for it as well.',
  'voc-over-limit':
    'The mix has {voc} of solvent, over the limit of {limit} already: no thinner, and another product where the law holds.',
  'voc-before-reaction':
    'The solvent of the parts is summed as if none of it reacted. The test method lets mixed parts react first, so its figure can be lower.',
  'thinner-without-bound':
    'The thinner itself is within the limit of {limit}, so that this limit sets no bound. The product instructions do.',
  'explosive-vapour':
    '{vapour} of vapour can explode from {lowerExplosiveLimit} in air. {airflow} of fresh air is the least that keeps the mean below {keepBelow} of that; low places hold more. To breathe it takes far more air: see the exposure limit. Extract at the floor with a fan that cannot ignite it, run it until the film is dry, measure, and keep flames, sparks and grinders away.',
  'harmful-vapour':
    '{airflow} of fresh air is the least that keeps {vapour} of vapour at {exposureLimit} on the mean; near the wet film it is more. Measure, and wear the respirator that the data sheet names until the readings are below the limit.',
  'purge-is-no-measurement':
    'After {time} the mean may be down to {to} where nothing evaporates any more and the air mixes. A wet film goes on evaporating, and low places clear last: keep the exhaust running and measure before anybody goes in.',
  'vapour-builds-up':
    'The vapour reaches {highest} of the air as a mean, more near the wet film and in low places. Compare it with the explosive limit and the exposure limit of the solvent, ventilate and measure.',
  'vapour-near-explosive-limit':
    'The vapour reaches {highest} of the air as a mean, {ofExplosiveLimit} of what can explode, and more near the wet film and in low places. It harms long before it explodes: compare it with the exposure limit of the solvent, ventilate, measure, and keep flames and sparks away. At 10 % of the explosive limit the air is dangerous to enter for its fire alone.',
  'silica-dust':
    'Grinding, cutting and blasting concrete gives off silica dust, which scars the lungs for life; the US rule begins at {actionLevel} as a mean of eight hours. Feed water or extract at the tool, use HEPA filters, never sweep dry or blow, and wear the respirator that the task asks for.',
  'silica-over-limit':
    'The silica breathed is {exposure} as a mean of eight hours, over the limit of {limit}. Stop, lower the dust at the tool, shorten the task, and wear respirators until new readings are below it.',
  'silica-undecided':
    'Whether the silica of {exposure} is within the limit of {limit} is not decided: it lies within what the measurement may be off by. Act as if it were over, and measure again.',
  'silica-over-action-level':
    'The silica breathed is {exposure} as a mean of eight hours and may have reached the action level of {actionLevel}. Rules on measuring, training and medical examinations begin there.',
  'dust-removed':
    '{dust} of dust comes off this floor, and its finest part scars the lungs for life; the US rule begins at {actionLevel} as a mean of eight hours. Catch it at the tool, use HEPA filters, never sweep dry, close the bags before they are moved.',
  'wear-respirator':
    'For these tools, places and hours the table asks for a respirator with a protection factor of {factor} or more, fitted to its wearer, beside the controls at the tool.',
  'not-in-table-1':
    'The table has no line for: {tasks}. Without one the exposure has to be measured and kept below the limit by other means, or the tool or its dust control changed.',
  'limits-differ-by-place':
    'Limits for {substance} differ by country and state, change from year to year, and are not all here. Look up the law of the place; a substance that sensitises can harm below all of them.',
  'pail-over-stated-mass':
    '{mass} of mixed resin stands together, and the pot life is stated for {limit}. It gels sooner, smokes and can burn: pour it out at once, mix smaller batches, never cover a pail that warms; spread it on sand outdoors.',
  'pail-mass-undecided':
    'Whether {mass} of mixed resin is more than the {limit} of the stated pot life is not decided: it lies within what the scale may be off by. Mix less.',
  'mixed-resin-heats':
    'Mixed resin that stays together heats itself: {mass} of it, warmed, is on record to have passed {temperature} and filled buildings with smoke. Mix small batches, pour out at once, spread leftovers on sand outdoors, never pour parts A and B together to be rid of them.',
  'isocyanate-in-the-air':
    'Isocyanates can cause asthma for life, at once or after years; whoever is sensitised reacts to traces and stays away from them. A US recommendation is {mean} as a mean of the shift and {ceiling} at most. Never spray or heat without the respirator and the training that the data sheet asks for; keep others out.',
  'methacrylate-vapour':
    'Methacrylate vapour ignites and irritates; the US limit is {limit} as a mean of eight hours. Exhaust it outdoors, no flame or sparks, keep others out, and store it cool.',
  'peroxide-hardener':
    'Peroxide hardeners burn eyes at once and catch fire with accelerators, rust and dirt. Never mix one with an accelerator, weigh it with clean tools, wear goggles.',
  'alkaline-liquid':
    'This liquid has a pH of {from} to {to}: it burns eyes and skin and etches glass and aluminium. Goggles, gloves, boots, and water to wash it off.',
  'cement-dust':
    'Cement powder with water has a pH above {ph}: it burns skin and eyes, and its dust harms the lungs. Respirator at the mixer, gloves, no kneeling in it.',
  'asbestos-and-lead':
    'Old coverings, mastics and paints may hold asbestos or lead. Stop, have them tested before anything is ground, and leave them to licensed firms.',
  'half-cured-dust':
    'Dust of half-cured resin sensitises skin and airways. Extract it, wear a respirator, long sleeves and gloves.',
  'solvent-rags':
    'Rags with solvent or resin can ignite by themselves or give off vapour. Keep them in a closed metal can, under water where the data sheet allows it.',
  'tool-noise':
    'These tools are louder than {level} dB(A), from which hearing is lost in a working life, and catch cables and clothes. Ear protection, guards on, cables behind.',
  'slippery-floor':
    'A wet floor is slippery and spiked shoes catch: barriers around it, shoes for it, a dry way out.',
  'heavy-loads':
    'Bags and pails of {mass} and more hurt backs: two people or a cart, and stacks no higher than the hips.',
  'wet-film-off-plan':
    'The wet film lies between the tabs around {low} and is not clearly what was planned. Move the resin now, while it is wet.',
  'beyond-the-gauge':
    'The film is beyond what this gauge can tell ({reading}): one side of it is open. Take a gauge with other tabs.',
  'wet-film-steers-only':
    'A wet film reading steers the laying. It does not accept a floor: measure again when it has cured.',
  'gauge-stands-on-peaks':
    'On a rough floor the feet of a gauge stand on the peaks, and on a broadcast it tells nothing.',
  'square-too-thin':
    'Thinner than planned: {names}. Add resin while it is wet, and look for the reason: a pail skipped, a thirsty floor, a wrong area.',
  'square-too-thick':
    'Thicker than planned: {names}. The material will not last if it goes on so; a thick film may trap air and cure hot.',
  'square-undecided':
    'The readings cannot tell whether the film is within the plan on {names}. Measure the wet film there; do not accept or reject it on what was poured.',
  'texture-drinks-all':
    'By these figures the texture drinks all that was poured on {names}: nothing is left above the peaks.',
  'material-runs-out':
    'The rest of the floor takes about {need}; about {missing} will be missing. Stop at a joint before it, or get more of the same batch.',
  'material-may-run-out':
    'The rest of the floor takes about {need}. At the rate of the thirstiest square {worst} would be missing.',
  'forecast-of-one-square': 'One square says how the floor drinks there. Forecast again after a few more.',
  'batches-off-ratio':
    'Off ratio by more than {tolerance}: batch {names}. Look for what was laid of it before anything covers the floor.',
  'batches-undecided':
    'The readings cannot tell whether the ratio was within its tolerance: batch {names}. Weigh, or read finer.',
  'ratio-drifts':
    '{part} wanders by {perBatch} with each batch against the first part, more than the readings can make. Look at the pump, the marks or the scale.',
  'spot-too-thin': '{place}: {measured} is below {limit} ({clause}).',
  'spot-too-thick': '{place}: {measured} is above {limit} ({clause}).',
  'mean-too-thin': 'The mean of {place} is {measured}, below {limit} ({clause}).',
  'mean-too-thick': 'The mean of {place} is {measured}, above {limit} ({clause}).',
  'too-many-thin-spots':
    '{measured} of the readings of {place} are below the specified film; {limit} is the limit ({clause}).',
  'film-undecided':
    '{place} reads {measured} against {limit} and is not decided ({clause}): {reason}. That is no pass.',
  'too-few-film-readings':
    '{rule} asks for more: {areas:area|areas}, {spots:spot|spots} and {readings:reading|readings} are missing. Until then the film is not accepted.',
  'bare-spot':
    '{place} has a reading of 0, or one below the correction for roughness: a bare place, or no reading at all. It counts as it stands; look at it again.',
  'rule-not-from-standard': '{rule}: {known}. Compare it with the standard before a report rests on it.',
  'film-with-sand-not-measured':
    'An ultrasonic gauge needs a film of one kind through its depth. A layer with sand is measured on a chip or a core.',
  'bond-not-accepted':
    '{name} at {measured} is not accepted against {limit}. Test around it to find how far the weak bond goes.',
  'bond-undecided':
    '{name} at {measured} against {limit} is not decided: {reason}. That is no pass; test again.',
  'too-few-pull-offs': 'Of the {testsNeeded:test|tests} asked for {missing:is|are} missing.',
  'glue-gave-way':
    'The glue gave way on: {names}. The bond of the coat is at least that and may be more; glue another dolly to learn it.',
  'substrate-broke-first':
    'The substrate broke below the limit under: {names}. The coat holds at least that much; the weak part is what lies under it.',
  'dolly-under-load':
    'A dolly lets go with force. Keep face and hands out of its way, wear eye protection, and mend the place afterwards.',
  'slippery-place':
    '{place} measures {measured}, below {limit} by {method}. People may slip there: keep them off it while wet, and ask for another finish.',
  'slip-undecided':
    '{place} measures {measured} against {limit} by {method}, closer than the reading can tell. That is no pass.',
  'slip-class-undecided':
    'A pendulum value of {measured} may be off by {uncertainty}, so that it does not tell the potentials for a slip apart: {classes}. Take the worse one, keep people off the place while it is wet, and measure again.',
  'slip-of-that-day':
    'A slip value ({method}) is that of its place, its day and its cleaning. Wear, polish and grease change it; no value of one method becomes one of another.',
  'slip-limit-of-document':
    'A figure by {method}, {standing}. The specification and the local code come first.',
  'pull-is-no-method':
    'A coefficient from a pull is not the result of a test method: slider, speed, water and cleaning decide.',
  'gloss-level-open':
    'Gloss and sheen belong to {levels}. Gloss at 60° alone does not tell the levels apart.',
  'haze-of-low-gloss': 'The haze index tells something only on high gloss.',
  'polish-before-guard':
    'Measure image clarity and haze before any guard or sealer is on: it can hide a poor polish.',
  'exposure-between-classes': 'The surface lies between the classes. Agree with the owner on a mock-up.',
  'class-undecided':
    'No class is sure: {scale} reads {measured} and may be off by {uncertainty}, which leaves open {classes}. Measure again or more finely, or agree beforehand which class counts.',
  'appearance-not-within-limit': '{scale} at {place} is {measured}, not within {limit}.',
  'appearance-undecided':
    '{scale} at {place} is {measured} against {limit}, closer than the instrument can tell. That is no pass.',
};
