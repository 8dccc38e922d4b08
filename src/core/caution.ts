import type { Quantity } from './quantity.ts';

/** Every caution this library can raise, by the folder that raises it. The words stand in `coating-math/messages`. */
export type CautionCode =
  // statistics
  | 'beyond-fitted-points'
  | 'mean-not-places'
  | 'normal-readings-assumed'
  | 'beyond-limit'
  | 'inside-guard-band'
  | 'formula-bends'
  | 'uncertainty-leaves-range'
  // area
  | 'deduction-left-in'
  | 'outline-unknown'
  | 'edges-of-each-piece'
  | 'moving-crack'
  // film
  | 'nothing-for-texture'
  | 'pulled-tight'
  | 'comparator-is-for-steel'
  | 'profile-is-advice'
  | 'profile-not-advised'
  | 'profile-rougher'
  | 'profile-smoother'
  | 'square-stands-for-its-place'
  // aggregate
  | 'below-nominal'
  | 'damp-sand'
  | 'lift-too-thin'
  | 'mortar-stays-open'
  | 'sand-outruns-resin'
  | 'swept-sand-again'
  | 'thrown-sand-dust'
  // mix
  | 'ratio-by-volume'
  | 'reading-moves-ratio'
  | 'reading-not-judged'
  | 'marks-off-ratio'
  | 'too-small-to-measure'
  | 'off-graduations'
  | 'never-pool-leftovers'
  | 'only-as-instructed'
  | 'thinner-ignites'
  | 'thinner-thins-film'
  | 'parts-used-off-ratio'
  | 'resin-left-over'
  | 'hardener-left-over'
  | 'never-gels'
  | 'gels-at-no-ratio'
  | 'mix-off-ratio'
  | 'mix-ratio-undecided'
  | 'water-foams-isocyanate'
  // cure
  | 'rule-of-thumb'
  | 'between-rows'
  | 'stand-time-outlasts-pot-life'
  | 'no-recoat-window'
  | 'heats-itself'
  // climate
  | 'condensation'
  | 'dew-margin-undecided'
  | 'dew-margin-now-only'
  | 'air-not-within-limit'
  | 'humidity-not-within-limit'
  | 'floor-not-within-limit'
  | 'material-not-within-limit'
  | 'outgassing'
  | 'rising-suits-condensation'
  | 'surface-not-rising'
  | 'falling-suits-outgassing'
  | 'trend-undecided'
  | 'no-laying-window'
  | 'window-on-rising-slab'
  | 'window-on-falling-slab'
  | 'gap-in-readings'
  | 'measure-before-laying'
  | 'carbon-monoxide'
  | 'blush-from-heater'
  // moisture
  | 'moisture-over-limit'
  | 'moisture-undecided'
  | 'doubtful-reading'
  | 'too-few-tests'
  | 'exposure-outside-window'
  | 'equilibration-too-short'
  | 'probe-too-shallow'
  | 'worst-test-governs'
  | 'service-climate'
  | 'dish-conditions'
  | 'box-heating-off'
  | 'methods-not-converted'
  | 'silica-dust-from-testing'
  | 'sheet-shows-moisture'
  | 'dwell-too-short'
  | 'sheet-is-no-measurement'
  | 'alkalinity-not-within-limit'
  | 'alkalinity-not-corrected'
  | 'barrier-needed'
  | 'barrier-undecided'
  | 'beyond-barrier'
  | 'no-barrier-limit'
  | 'fit-by-moisture-only'
  | 'drying-rules-disagree'
  | 'no-vapour-retarder'
  | 'permeance-not-within-limit'
  | 'permeance-by-its-method'
  // inspect
  | 'wet-film-off-plan'
  | 'beyond-the-gauge'
  | 'wet-film-steers-only'
  | 'gauge-stands-on-peaks'
  | 'square-too-thin'
  | 'square-too-thick'
  | 'square-undecided'
  | 'texture-drinks-all'
  | 'material-runs-out'
  | 'material-may-run-out'
  | 'forecast-of-one-square'
  | 'batches-off-ratio'
  | 'batches-undecided'
  | 'ratio-drifts'
  | 'spot-too-thin'
  | 'spot-too-thick'
  | 'mean-too-thin'
  | 'mean-too-thick'
  | 'too-many-thin-spots'
  | 'film-undecided'
  | 'too-few-film-readings'
  | 'bare-spot'
  | 'rule-not-from-standard'
  | 'film-with-sand-not-measured'
  | 'bond-not-accepted'
  | 'bond-undecided'
  | 'too-few-pull-offs'
  | 'glue-gave-way'
  | 'substrate-broke-first'
  | 'dolly-under-load'
  | 'slippery-place'
  | 'slip-undecided'
  | 'slip-class-undecided'
  | 'slip-of-that-day'
  | 'slip-limit-of-document'
  | 'pull-is-no-method'
  | 'gloss-level-open'
  | 'haze-of-low-gloss'
  | 'polish-before-guard'
  | 'exposure-between-classes'
  | 'class-undecided'
  | 'appearance-not-within-limit'
  | 'appearance-undecided'
  // batch
  | 'heat-in-the-pail'
  | 'pot-life-too-short'
  | 'no-time-to-place'
  | 'batch-below-measuring-step'
  | 'batch-below-least'
  | 'skin-and-eyes'
  | 'wet-edge-closes'
  | 'no-stop-in-reach'
  | 'last-strip-too-hard'
  // order
  | 'leftover-material'
  // plan
  | 'no-pot-life-at-this-temperature'
  | 'product-not-named'
  | 'zone-without-coat'
  | 'coat-before-one-beneath'
  // safety
  | 'solvent-in-the-air'
  | 'exempt-solvent-ignites'
  | 'voc-over-limit'
  | 'voc-before-reaction'
  | 'thinner-without-bound'
  | 'explosive-vapour'
  | 'harmful-vapour'
  | 'purge-is-no-measurement'
  | 'vapour-builds-up'
  | 'vapour-near-explosive-limit'
  | 'silica-dust'
  | 'silica-over-limit'
  | 'silica-undecided'
  | 'silica-over-action-level'
  | 'dust-removed'
  | 'wear-respirator'
  | 'not-in-table-1'
  | 'limits-differ-by-place'
  | 'pail-over-stated-mass'
  | 'pail-mass-undecided'
  | 'mixed-resin-heats'
  | 'isocyanate-in-the-air'
  | 'methacrylate-vapour'
  | 'peroxide-hardener'
  | 'alkaline-liquid'
  | 'cement-dust'
  | 'asbestos-and-lead'
  | 'half-cured-dust'
  | 'solvent-rags'
  | 'tool-noise'
  | 'slippery-floor'
  | 'heavy-loads';

/** A finding beside an answer: the answer stands, and this belongs with it. */
export interface Caution {
  /** What it is about; stable, for programs. */
  readonly code: CautionCode;
  /** `note`: good to know. `caution`: may cost the floor. `danger`: may hurt somebody. */
  readonly severity: 'note' | 'caution' | 'danger';
  /** The numbers and names that belong into its words. */
  readonly params: Readonly<Record<string, Quantity | string | number>>;
  /** Id in the register of sources. */
  readonly source: string;
  /** Given where the source was not read but is quoted from memory. */
  readonly status?: 'memory' | undefined;
}

/** Where a figure comes from: enough to check it with a pencil. */
export interface Basis {
  /** Name of the figure within its answer. */
  readonly id: string;
  /** The public function that computed it, with its folder: `film.wetThickness`. */
  readonly function: string;
  /** The formula in plain signs. */
  readonly formula: string;
  /** What went in. */
  readonly inputs: Readonly<Record<string, unknown>>;
  /** Id in the register of sources. */
  readonly source: string;
  /** Given where the source was not read but is quoted from memory. */
  readonly status?: 'memory' | undefined;
  /** What was assumed, where something was. */
  readonly assumption?: string | undefined;
}

/** A source as an answer names it: its id, and that it is quoted from memory where it is. */
export type Cited = Pick<Caution, 'source' | 'status'>;
