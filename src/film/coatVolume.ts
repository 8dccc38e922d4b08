import { acrossLikely, MIDDLE_TAKEN, withMiddles, type Values } from '../core/acrossLikely.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { AREA, LENGTH, SHARE, SPREAD_RATE, VOLUME } from '../core/dimensions.ts';
import { echoIn } from '../core/echo.ts';
import { NOT_NEGATIVE, PART, PART_OR_WHOLE, POSITIVE } from '../core/limits.ts';
import type { Direction } from '../core/monotone.ts';
import type { Area, Length, Quantity, Share, SpreadRate, Volume } from '../core/quantity.ts';
import type { LikelyRange, Ranged } from '../core/range.ts';
import { fields, read, readOr, refuseAll, show, write } from '../core/read.ts';
import { readFlag, readUnit } from '../core/readPlain.ts';
import type { LengthUnit, VolumeUnit } from '../core/unitCodes.ts';

/** Input of {@link coatVolume}. Give one of `wetThickness`, `dryThickness` and `spreadRate`. */
export interface CoatVolumeInput<U extends VolumeUnit = VolumeUnit, T extends LengthUnit = LengthUnit> {
  /** Area to be coated. */
  readonly area: Ranged<Area>;
  /** Wet film to be laid above the peaks of the floor. */
  readonly wetThickness?: Ranged<Length> | undefined;
  /** Film that must be there when it has cured; goes with `solidsByVolume`. */
  readonly dryThickness?: Ranged<Length> | undefined;
  /** Share of the mixed volume that stays when it has cured; goes with `dryThickness`. */
  readonly solidsByVolume?: Ranged<Share> | undefined;
  /** Rate of a test square on this floor. It holds what the floor drinks already. */
  readonly spreadRate?: Ranged<SpreadRate> | undefined;
  /** Whether the coat is pulled tight into the pores, so that its rate stands for no film. Goes with `spreadRate`. */
  readonly pulledTight?: boolean | undefined;
  /** Depth that fills the valleys of the floor, as an average over the area. */
  readonly textureDepth?: Ranged<Length> | undefined;
  /** Depth that the pores drink, as an average over the area. First coat only. */
  readonly porosity?: Ranged<Length> | undefined;
  /** Keyways, wedges and low spots that are filled with the same material. */
  readonly fills?: Ranged<Volume> | undefined;
  /** Share of what leaves the pail that does not reach the floor. */
  readonly transferLoss?: Ranged<Share> | undefined;
  /** Share of what is mixed that stays in pails and cups. */
  readonly residue?: Ranged<Share> | undefined;
  /** Volume that rollers, squeegees and shoes hold back, all together. */
  readonly toolLoad?: Ranged<Volume> | undefined;
  /** Volume of batches that are given up for lost. */
  readonly lostBatch?: Ranged<Volume> | undefined;
  /** Unit of the volumes in the answer. */
  readonly unit: U;
  /** Unit of the film in the answer. */
  readonly thicknessUnit: T;
}

/** What takes material that does not become film. */
export type LossCause = 'texture' | 'porosity' | 'transfer' | 'residue' | 'tools' | 'lost-batch';

/** How a loss grows: with the area, with what is mixed, or not at all. */
export type LossKind = 'per-area' | 'share' | 'fixed';

/** One loss of a coat. */
export interface CoatLoss<U extends VolumeUnit = VolumeUnit> {
  /** What takes it. */
  readonly cause: LossCause;
  /** How it grows. */
  readonly kind: LossKind;
  /** What it takes. The losses, the film and the fills add up to the volume, end by end. */
  readonly volume: LikelyRange<U>;
}

/** What one coat takes. */
export interface CoatVolume<U extends VolumeUnit = VolumeUnit, T extends LengthUnit = LengthUnit> {
  /** To be mixed. */
  readonly volume: LikelyRange<U>;
  /** Wet film above the peaks; for a spread rate the average over the area, what the floor drinks included. */
  readonly wetThickness: LikelyRange<T>;
  /** What lies on the floor as film. */
  readonly film: LikelyRange<U>;
  /** Each loss that was given, by its cause. */
  readonly losses: readonly CoatLoss<U>[];
  /** The input whose width moves the volume most; nothing where no input is a range. */
  readonly driver?: string | undefined;
  /** No volume lies outside the range, as far as the inputs hold. */
  readonly enclosure: 'proven' | 'corners only';
  /** What belongs with the figures. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/** What the formula is computed from. */
type Coat = Values<Omit<CoatVolumeInput, 'unit' | 'thicknessUnit'>>;
/** What of it is a quantity. */
type Input = Exclude<keyof Coat, 'pulledTight'>;

/** How each volume here moves with each input. */
const DIRECTIONS: Readonly<Partial<Record<keyof CoatVolumeInput, Direction>>> = {
  area: '+',
  wetThickness: '+',
  dryThickness: '+',
  solidsByVolume: '-',
  spreadRate: '-',
  textureDepth: '+',
  porosity: '+',
  fills: '+',
  transferLoss: '+',
  residue: '+',
  toolLoad: '+',
  lostBatch: '+',
};

const LOSSES: readonly (readonly [LossCause, LossKind, Input])[] = [
  ['texture', 'per-area', 'textureDepth'],
  ['porosity', 'per-area', 'porosity'],
  ['transfer', 'share', 'transferLoss'],
  ['residue', 'share', 'residue'],
  ['tools', 'fixed', 'toolLoad'],
  ['lost-batch', 'fixed', 'lostBatch'],
];

/**
 * How much must be mixed for a coat: low, likely and high, with each loss by its cause.
 *
 * Each loss enters in its own way: what the floor drinks grows with the area, what stays in pails or misses the floor
 * is a share of what is mixed and so divides, and tools and lost batches take the same from a small room as from a
 * large one. Everything is one formula of all inputs, so the ends of the range belong together.
 *
 * @formula
 * ```math
 * V = \frac{A \, (w + t + p) + F}{(1 - r)(1 - l)} + T + B \qquad w = \frac{d}{s} \;\text{or}\; \frac{1}{S}
 * ```
 * @units area, lengths, shares, volumes or spread rate, each a value or a range; answers volumes and a length.
 * @validRange area and film above 0; solids above 0 % and up to 100 %; shares from 0 % to below 100 %; the rest 0 or
 * more. Texture and porosity do not go with a spread rate, which holds them already.
 * @accuracy Exact up to round-off, relative error below 2e-15 for shares of up to a half each, with fewer digits the nearer
 * one comes to the whole; as good as the losses that are put in. A plan without a
 * test square is good for about 15 %, with one for 5 %.
 * @source pcrc-coverage-2003, common-practice
 * @param input - Area, film or rate, losses, and the units wanted.
 * @returns The volume as a range with its losses and what drives it; the film; cautions. Where a range has no likely
 * value its middle is taken, and the basis says so.
 * @throws An `InputError` that names the field; `conflict` for two films, or for a loss counted twice.
 * @example
 * ```ts
 * import { between } from 'coating-math/core';
 * import * as film from 'coating-math/film';
 *
 * const barrier = film.coatVolume({
 *   area: { value: 5964, unit: 'ft2' },
 *   wetThickness: { value: 18, unit: 'mil' },
 *   textureDepth: between(0.5, 2, 'mil', { likely: 1 }),
 *   residue: { value: 2, unit: '%' },
 *   toolLoad: { value: 0.75, unit: 'usgal' },
 *   unit: 'usgal',
 *   thicknessUnit: 'mil',
 * });
 * barrier.volume.likely.value.toFixed(2); // => '72.83'
 * barrier.losses.map(({ cause, volume }) => `${cause} ${volume.likely.value.toFixed(2)}`);
 * // => ['texture 3.72', 'residue 1.44', 'tools 0.75']
 * barrier.driver; // => 'textureDepth'
 * ```
 */
export function coatVolume<U extends VolumeUnit, T extends LengthUnit>(
  input: CoatVolumeInput<U, T>,
): CoatVolume<U, T> {
  const { unit, thicknessUnit, spreadRate, pulledTight } = fields('coatVolume', input);
  readUnit('coatVolume', 'thicknessUnit', thicknessUnit, LENGTH);
  if (pulledTight !== undefined) readFlag('coatVolume', 'pulledTight', pulledTight);
  checkFilm(input);
  const given = withMiddles(input);
  const range = <V extends VolumeUnit | LengthUnit>(formula: (coat: Coat) => Quantity<V>) =>
    acrossLikely('coatVolume', DIRECTIONS, formula, given);
  const total = range((coat) => write('coatVolume', partsOf(coat).mixed, VOLUME, unit));
  const part = (key: keyof Parts, input?: Input) =>
    ends(range((coat) => echoIn('coatVolume', input && coat[input], partsOf(coat)[key], VOLUME, unit)));

  const cautions: Caution[] = [];
  if (pulledTight === true) {
    cautions.push({ code: 'pulled-tight', severity: 'note', params: {}, source: 'common-practice' });
  } else if (spreadRate === undefined && input.textureDepth === undefined && input.porosity === undefined) {
    cautions.push({
      code: 'nothing-for-texture',
      severity: 'caution',
      params: {},
      source: 'common-practice',
    });
  }
  const { driver, enclosure } = total;
  return {
    volume: ends(total),
    wetThickness: ends(
      range((coat) => echoIn('coatVolume', coat.wetThickness, filmOf(coat), LENGTH, thicknessUnit)),
    ),
    film: part('film'),
    losses: LOSSES.filter(([, , key]) => input[key] !== undefined).map(([cause, kind, key]) => ({
      cause,
      kind,
      volume: part(cause, key),
    })),
    ...(driver && { driver }),
    enclosure,
    cautions,
    basis: [
      basis(
        'volume',
        'film.coatVolume',
        'V = (A·(w + t + p) + F) / ((1 − r)·(1 − l)) + T + B',
        'common-practice',
        input,
        given !== input ? MIDDLE_TAKEN : undefined,
      ),
    ],
  };
}

/** Refuses a coat without a film, with two, or with a loss that its rate holds already. */
export function checkFilm(input: Partial<CoatVolumeInput>): void {
  const has = (key: keyof CoatVolumeInput) => input[key] !== undefined;
  const [one, ...more] = (['wetThickness', 'dryThickness', 'spreadRate'] as const).filter(has);
  const wrong: [keyof CoatVolumeInput, string][] = more.map((film) => [
    film,
    `nothing beside ${String(one)}`,
  ]);
  if (!one) wrong.push(['wetThickness', 'a length, or dryThickness or spreadRate in its place']);
  if (has('solidsByVolume') !== has('dryThickness')) {
    wrong.push([
      'solidsByVolume',
      has('dryThickness') ? 'a share beside dryThickness' : 'nothing without dryThickness',
    ]);
  }
  if (has('spreadRate')) {
    for (const drunk of (['textureDepth', 'porosity'] as const).filter(has)) {
      wrong.push([drunk, 'nothing beside spreadRate, which holds it']);
    }
  } else if (input.pulledTight === true) wrong.push(['pulledTight', 'nothing without spreadRate']);
  refuseAll(
    wrong.map(([key, expected]) => ({
      code: has(key) ? 'conflict' : 'missing',
      function: 'coatVolume',
      path: [key],
      expected,
      received: show(input[key]),
    })),
  );
}

/** The three values alone. */
function ends<V extends string>({ low, likely, high }: LikelyRange<V>): LikelyRange<V> {
  return { low, likely, high };
}

/** Where the material goes, in m³; `mixed` is all of it. */
type Parts = Record<LossCause | 'film' | 'mixed', number>;

function partsOf(values: Coat): Parts {
  const { area, textureDepth, porosity, fills, transferLoss, residue, toolLoad, lostBatch } = values;
  const depth = (key: string, length: Length | undefined) =>
    readOr(0, 'coatVolume', key, length, LENGTH, NOT_NEGATIVE);
  const share = (key: string, part: Share | undefined) => readOr(0, 'coatVolume', key, part, SHARE, PART);
  const fixed = (key: string, volume: Volume | undefined) =>
    readOr(0, 'coatVolume', key, volume, VOLUME, NOT_NEGATIVE);

  const area_m2 = read('coatVolume', 'area', area, AREA, POSITIVE);
  const film_m3 = area_m2 * filmOf(values);
  const texture_m3 = area_m2 * depth('textureDepth', textureDepth);
  const porosity_m3 = area_m2 * depth('porosity', porosity);
  const [missing, left] = [share('transferLoss', transferLoss), share('residue', residue)];
  const [tools_m3, lost_m3] = [fixed('toolLoad', toolLoad), fixed('lostBatch', lostBatch)];

  const onFloor_m3 = film_m3 + texture_m3 + porosity_m3 + fixed('fills', fills);
  const sent_m3 = onFloor_m3 / (1 - missing);
  const poured_m3 = sent_m3 / (1 - left);
  return {
    film: film_m3,
    texture: texture_m3,
    porosity: porosity_m3,
    transfer: sent_m3 * missing,
    residue: poured_m3 * left,
    tools: tools_m3,
    'lost-batch': lost_m3,
    mixed: poured_m3 + tools_m3 + lost_m3,
  };
}

/** Wet film in metres, however it was given. */
function filmOf({ wetThickness, dryThickness, solidsByVolume, spreadRate }: Coat): number {
  if (spreadRate !== undefined)
    return 1 / read('coatVolume', 'spreadRate', spreadRate, SPREAD_RATE, POSITIVE);
  if (dryThickness === undefined) return read('coatVolume', 'wetThickness', wetThickness, LENGTH, POSITIVE);
  const dry_m = read('coatVolume', 'dryThickness', dryThickness, LENGTH, POSITIVE);
  return dry_m / read('coatVolume', 'solidsByVolume', solidsByVolume, SHARE, PART_OR_WHOLE);
}
