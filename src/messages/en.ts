import type { CautionCode } from '../core/caution.ts';

/** The English words for every caution. A name in braces stands for the parameter of that name. */
export const en: Readonly<Record<CautionCode, string>> = {
  condensation:
    'The floor at {surface} is only {margin} above the dew point of {dewPoint}; {limit} are asked for. Moisture may settle on the floor or the wet film and spoil the bond. Do not lay until the margin is there.',
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
  'gap-in-readings':
    'Readings further apart than {longestGap} leave {gaps} gaps. Nothing is known in a gap, so it counts as closed.',
  'measure-before-laying':
    'Windows out of forecasts and earlier readings are for planning. Measure air, humidity and floor again before laying and about every four hours after, and follow the product instructions.',
  'carbon-monoxide':
    'A fired heater without a flue gives off carbon monoxide, which kills without a smell. Keep it out of the room or let its exhaust out, ventilate, use a monitor, and follow its instructions and the local code.',
  'blush-from-heater':
    'Burning {burnt} of {fuel} in the room leaves {water} of water and {carbonDioxide} of carbon dioxide. Both can turn a curing amine film white, greasy and without bond. Use indirect or electric heat.',
  'moisture-over-limit':
    'Test {test} reads {measured}, over the limit of {limit}. One wet place is enough to lift a floor: do not coat without a barrier that bears it, or wait and test again.',
  'moisture-undecided':
    'Whether the floor is within the limit of {limit} is not decided: the highest test reads {measured}, and readings too close to the limit, tests not done by the book or too few tests leave it open.',
  'too-few-tests': '{usable} tests count and {testsNeeded} are asked for on a floor of this size.',
  'exposure-outside-window':
    '{tests} dishes stood outside the window of 60 to 72 hours. They decide nothing: repeat them.',
  'equilibration-too-short':
    '{tests} readings were taken before the humidity had come to rest. They decide nothing: read again later.',
  'probe-too-shallow':
    '{tests} holes are not deep enough. A shallow probe reads low, so below the limit it decides nothing: drill deeper.',
  'worst-test-governs': 'The worst test governs, never the mean of all: a floor fails where it is wettest.',
  'service-climate':
    'Moisture tests count only where the building is closed and has been at its service climate for at least 48 hours.',
  'methods-not-converted':
    'Each test method has limits of its own. No result of one is converted into another, and the limits are those in the product instructions.',
  'silica-dust-from-testing':
    'Drilling and grinding concrete gives off silica dust, which scars the lungs. Extract it at the tool, wear a respirator, and follow the local code.',
  'sheet-shows-moisture': '{wet} sheets show moisture. Measure the slab before anything is laid on it.',
  'dwell-too-short': '{tests} sheets lay for less than {leastDwell}. Dry, they decide nothing.',
  'sheet-is-no-measurement':
    'A sheet without moisture is weak evidence and no number: it shows only what came up in that time and climate.',
  'alkalinity-not-within-limit':
    'A pH of {measured} is not clearly within the limit of {limit} in the product instructions.',
  'alkalinity-not-corrected':
    'A pH is judged as it was read. It is not corrected for the water of the test, which moves it by far less than a logarithm would say.',
  'barrier-needed':
    'The slab is over what the flooring system bears on its own. A moisture barrier is needed, or another system, or time to dry.',
  'barrier-undecided':
    'Whether the flooring system bears this slab on its own is not decided within the errors of the tests. Plan with a barrier, or measure better.',
  'beyond-barrier':
    'The slab is not clearly within what the barrier itself bears. Ask its maker in writing before going on.',
  'fit-by-moisture-only':
    'This speaks of moisture alone. Surface, soundness, climate and dew point are judged apart, and the product instructions come first.',
  'drying-rules-disagree':
    '{rules} published rules give these times and disagree. They are for planning, start when the building is closed and heated, and never replace a test or make a date.',
  'no-vapour-retarder':
    'Without a vapour retarder below, a slab may never dry enough, and what is measured today can rise again under a floor.',
  'leftover-material':
    '{leftover} will be left of {name}. Keep it sealed and in part pairs; never pool what is left of A and B.',
};
