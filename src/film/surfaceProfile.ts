import type { Basis, Caution } from '../core/caution.ts';
import { LENGTH } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { SILICA_DUST } from '../core/hazards.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Length } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';

/** Input of {@link surfaceProfile}. */
export interface SurfaceProfileInput {
  /** Thickness of the coat or the system that goes on the concrete. */
  readonly thickness: Length;
  /** Class of the floor as compared with the chips, 1 to 10. */
  readonly profileClass?: number | undefined;
}

/** Kinds of system, as the guideline divides them. */
export type ProtectiveSystem =
  'sealer' | 'thin-film' | 'high-build' | 'self-levelling' | 'polymer-overlay' | 'concrete-overlay';

/** Which profile a guideline advises for a thickness. */
export interface SurfaceProfile {
  /** Kinds of system of that thickness; none in a gap between two of them. */
  readonly systems: readonly ProtectiveSystem[];
  /** Classes advised, from the smoothest to the roughest; nothing in a gap. */
  readonly classes?: { readonly from: number; readonly to: number } | undefined;
  /** Where the floor lies, when its class was given and one is advised. */
  readonly fit?: 'smoother' | 'within' | 'rougher' | undefined;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

/** System, least and greatest thickness in mil, smoothest and roughest class: quoted from memory. */
const ADVICE: readonly (readonly [ProtectiveSystem, number, number, number, number])[] = [
  ['sealer', 0, 3, 1, 2],
  ['thin-film', 4, 10, 1, 3],
  ['high-build', 10, 40, 3, 5],
  ['self-levelling', 50, 125, 4, 6],
  ['polymer-overlay', 125, 250, 5, 9],
  ['concrete-overlay', 250, Infinity, 5, 10],
];
const GUIDELINE = { source: 'icri-310-2r-2013', status: 'memory' } as const;

/**
 * Which concrete surface profile a guideline advises under a thickness, and whether the floor has it. Advice beside a
 * plan, never a figure to compute with: the product's instructions come first.
 *
 * @formula
 * ```math
 * \text{classes} = \bigcup_{t_i \le t \le T_i} \left[ c_i, C_i \right]
 * ```
 * @units length; answers classes, which have no unit.
 * @validRange thickness above 0; profileClass a whole number from 1 to 10. Between 3 and 4 mil, and between 40 and
 * 50 mil, the guideline names no system.
 * @accuracy The table is quoted from memory and not confirmed; a class is judged by eye against chips, one step apart.
 * @source icri-310-2r-2013
 * @param input - Thickness and, if known, the class of the floor.
 * @returns Systems of that thickness, classes advised, and where the floor lies.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * const advice = film.surfaceProfile({ thickness: { value: 20, unit: 'mil' }, profileClass: 2 });
 * advice.classes; // => { from: 3, to: 5 }
 * advice.fit; // => 'smoother'
 * ```
 */
export function surfaceProfile(input: SurfaceProfileInput): SurfaceProfile {
  const { thickness, profileClass } = fields('surfaceProfile', input);
  const thickness_m = read('surfaceProfile', 'thickness', thickness, LENGTH, POSITIVE);
  const thickness_mil = write('surfaceProfile', thickness_m, LENGTH, 'mil').value;
  if (
    profileClass !== undefined &&
    !(Number.isInteger(profileClass) && profileClass >= 1 && profileClass <= 10)
  ) {
    const code = typeof profileClass === 'number' ? 'out-of-range' : 'wrong-type';
    refuse('surfaceProfile', code, ['profileClass'], 'a whole number from 1 to 10', profileClass);
  }

  const slack = 1e-9;
  const rows = ADVICE.filter(
    ([, least, most]) => thickness_mil >= least - slack && thickness_mil <= most + slack,
  );
  const caution = (
    code: Caution['code'],
    severity: Caution['severity'],
    params: Caution['params'],
  ): Caution => ({
    code,
    severity,
    params,
    ...GUIDELINE,
  });
  const basis = [
    {
      id: 'classes',
      function: 'film.surfaceProfile',
      formula: 'table of thickness against class',
      inputs: echo({ thickness, profileClass }),
      ...GUIDELINE,
    },
  ];
  const systems = rows.map(([system]) => system);
  if (rows.length === 0) {
    return {
      systems,
      cautions: [caution('profile-not-advised', 'note', { thickness: echo(thickness) })],
      basis,
    };
  }

  const classes = {
    from: Math.min(...rows.map(([, , , from]) => from)),
    to: Math.max(...rows.map(([, , , , to]) => to)),
  };
  const cautions = [caution('profile-is-advice', 'note', { ...classes })];
  if (profileClass === undefined) return { systems, classes, cautions, basis };
  const fit = profileClass < classes.from ? 'smoother' : profileClass > classes.to ? 'rougher' : 'within';
  if (fit !== 'within') {
    cautions.push(caution(`profile-${fit}`, 'caution', { class: profileClass, ...classes }));
    if (fit === 'smoother') cautions.push(SILICA_DUST);
  }
  return { systems, classes, fit, cautions, basis };
}
