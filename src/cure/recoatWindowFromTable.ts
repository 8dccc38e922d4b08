import { basis } from '../core/basis.ts';
import type { Caution } from '../core/caution.ts';
import { TIME } from '../core/dimensions.ts';
import { ABSOLUTE, POSITIVE } from '../core/limits.ts';
import type { Temperature, Time } from '../core/quantity.ts';
import { fields, read, refuse } from '../core/read.ts';
import { readObjects } from '../core/readPlain.ts';
import { readTemperature } from '../core/temperature.ts';
import type { TimeUnit } from '../core/unitCodes.ts';
import { SLACK } from './timeRule.ts';
import { windowOf, type RecoatWindow } from './recoatWindow.ts';

/** One row of a table of recoat windows: the same window for a band of temperatures. */
export interface RecoatRow {
  /** Coldest surface temperature of the row. */
  readonly from: Temperature;
  /** Warmest surface temperature of the row. */
  readonly to: Temperature;
  /** Shortest wait before the next coat. */
  readonly shortest: Time;
  /** Longest wait before the next coat. */
  readonly longest: Time;
}

/** Input of {@link recoatWindowFromTable}. */
export interface RecoatWindowFromTableInput<U extends TimeUnit = TimeUnit> {
  /** The rows of the instructions, from cold to warm. */
  readonly rows: readonly RecoatRow[];
  /** Temperature of the surface by which the table is read; most tables mean the highest one sustained for an hour. */
  readonly surface: Temperature;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * When the next coat may be laid, out of a table that gives one window for each band of temperatures.
 *
 * Bands of one table are often rounded apart, 71 to 80 and 81 to 90 °F: a temperature between two rows takes the
 * longer wait and the shorter limit of both.
 *
 * @formula
 * ```math
 * t_\mathrm{min} = \max_{\text{rows beside } T} t_s \qquad t_\mathrm{max} = \min_{\text{rows beside } T} t_l
 * ```
 * @units temperatures, times; answers times.
 * @validRange rows from cold to warm that do not overlap by more than an end; surface inside the table.
 * @accuracy The figures of the table.
 * @source ufgs-09971
 * @param input - Rows, surface temperature and the unit wanted.
 * @returns The shortest and the longest wait in `input.unit`, and the cautions.
 * @throws An `InputError` that names the field; `out-of-range` outside the table.
 * @example
 * ```ts
 * import * as cure from 'coating-math/cure';
 *
 * const answer = cure.recoatWindowFromTable({
 *   rows: [
 *     {
 *       from: { value: 10, unit: 'degC' },
 *       to: { value: 20, unit: 'degC' },
 *       shortest: { value: 12, unit: 'h' },
 *       longest: { value: 48, unit: 'h' },
 *     },
 *     {
 *       from: { value: 21, unit: 'degC' },
 *       to: { value: 30, unit: 'degC' },
 *       shortest: { value: 6, unit: 'h' },
 *       longest: { value: 24, unit: 'h' },
 *     },
 *   ],
 *   surface: { value: 20.5, unit: 'degC' },
 *   unit: 'h',
 * });
 * [answer.shortest.value, answer.longest.value, answer.cautions[0]?.code]; // => [12, 24, 'between-rows']
 * ```
 */
export function recoatWindowFromTable<U extends TimeUnit>(
  input: RecoatWindowFromTableInput<U>,
): RecoatWindow<U> {
  const fn = 'recoatWindowFromTable';
  const { rows, surface, unit } = fields(fn, input);
  const bands = readObjects(fn, 'rows', rows, 1).map((row, i) => {
    const path = ['rows', i];
    const from = readTemperature(fn, 'from', row.from, ABSOLUTE, path);
    const to = readTemperature(fn, 'to', row.to, ABSOLUTE, path);
    const shortest_s = read(fn, 'shortest', row.shortest, TIME, POSITIVE, path);
    const longest_s = read(fn, 'longest', row.longest, TIME, POSITIVE, path);
    if (to < from - SLACK) refuse(fn, 'conflict', [...path, 'to'], 'no lower than from', row.to);
    if (longest_s < shortest_s)
      refuse(fn, 'conflict', [...path, 'longest'], 'no shorter than shortest', row.longest);
    return { from, to, shortest_s, longest_s };
  });
  bands.forEach(({ from }, i) => {
    const colder = bands[i - 1];
    if (colder && from < colder.to - SLACK) {
      refuse(
        fn,
        'conflict',
        ['rows', i, 'from'],
        'no lower than the end of the row before it',
        rows[i]?.from,
      );
    }
  });
  const celsius = readTemperature(fn, 'surface', surface, ABSOLUTE);
  const within = bands.filter(({ from, to }) => from <= celsius + SLACK && celsius <= to + SLACK);
  const colder = bands.filter(({ to }) => to < celsius).at(-1);
  const warmer = bands.find(({ from }) => from > celsius);
  const beside = within.length > 0 ? within : [colder, warmer].filter((band) => band !== undefined);
  if (within.length === 0 && beside.length < 2) {
    refuse(fn, 'out-of-range', ['surface'], 'a temperature inside the table', surface);
  }
  const between: Caution = { code: 'between-rows', severity: 'caution', params: {}, source: 'ufgs-09971' };
  const shortest_s = Math.max(...beside.map((band) => band.shortest_s));
  const longest_s = Math.min(...beside.map((band) => band.longest_s));
  return windowOf(fn, shortest_s, longest_s, unit, {
    cautions: within.length > 0 ? [] : [between],
    basis: [
      basis('shortest', 'cure.recoatWindowFromTable', 'row of the table', 'ufgs-09971', {
        rows: rows.map(({ from, to, shortest, longest }) => ({ from, to, shortest, longest })),
        surface,
      }),
    ],
  });
}
