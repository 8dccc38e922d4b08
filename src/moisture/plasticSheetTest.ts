import type { Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { TIME } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Area, Time } from '../core/quantity.ts';
import { fields, read } from '../core/read.ts';
import { readFlag, readList, readObject } from '../core/readPlain.ts';
import { testsFor } from './count.ts';

/** What a sheet is, and what it is not. */
const SHEET: Caution = {
  code: 'sheet-is-no-measurement',
  severity: 'note',
  params: { side: { value: 18, unit: 'in' }, film: { value: 4, unit: 'mil' } },
  source: 'astm-d4263',
};

/** One sheet taped to the floor. */
export interface PlasticSheet {
  /** How long it lay. */
  readonly dwell: Time;
  /** Whether there was water under it, or the concrete had become darker. */
  readonly moisture: boolean;
}

/** Input of {@link plasticSheetTest}. */
export interface PlasticSheetTestInput {
  /** Area of the floor that the sheets stand for. */
  readonly floorArea: Area;
  /** How long a sheet must lie: at least 16 h by ASTM D4263, 24 h by UFC 3-190-06. */
  readonly leastDwell: Time;
  /** All sheets on the floor. */
  readonly tests: readonly PlasticSheet[];
}

/** What the sheets show. There is no number in it, and none can be made of it. */
export interface PlasticSheetResult {
  /** `fails` where a sheet shows moisture; `meets` only says that none did. */
  readonly verdict: Verdict;
  /** Sheets that show moisture. */
  readonly wet: number;
  /** Sheets that lay long enough. */
  readonly usable: number;
  /** Sheets that a floor of this size asks for. */
  readonly testsNeeded: number;
  /** What belongs with the verdict; never empty. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * What plastic sheets taped to the floor show: moisture, or none in the time they lay.
 *
 * One wet sheet fails the floor, however short it lay. A dry sheet is weak evidence: it cannot replace a measurement.
 *
 * @formula
 * ```math
 * \text{wet sheets} = 0
 * ```
 * @units area, times; answers counts.
 * @validRange floorArea above 0 and up to 1e9 m²; times above 0.
 * @accuracy A test by eye.
 * @source astm-d4263, ufc-3-190-06
 * @param input - Floor, how long sheets must lie, and the sheets.
 * @returns The verdict with the counts.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * const floor = { floorArea: { value: 450, unit: 'ft2' }, leastDwell: { value: 16, unit: 'h' } } as const;
 * const sheet = { dwell: { value: 18, unit: 'h' }, moisture: false } as const;
 * moisture.plasticSheetTest({ ...floor, tests: [sheet] }).verdict; // => 'meets'
 * moisture.plasticSheetTest({ ...floor, leastDwell: { value: 24, unit: 'h' }, tests: [sheet] }).verdict; // => 'undecided'
 * ```
 */
export function plasticSheetTest(input: PlasticSheetTestInput): PlasticSheetResult {
  const fn = 'plasticSheetTest';
  const { floorArea, leastDwell, tests } = fields(fn, input);
  const testsNeeded = testsFor(fn, 'plastic sheet', floorArea);
  const longEnough_s = read(fn, 'leastDwell', leastDwell, TIME, POSITIVE) * (1 - 1e-12);
  const sheets = readList(fn, 'tests', tests, 1).map((test, i) => {
    const sheet = readObject(fn, i, test, ['tests']);
    const path = ['tests', i];
    const dwell_s = read(fn, 'dwell', sheet.dwell, TIME, POSITIVE, path);
    return { longEnough: dwell_s >= longEnough_s, wet: readFlag(fn, 'moisture', sheet.moisture, path) };
  });
  const wet = sheets.filter((sheet) => sheet.wet).length;
  const usable = sheets.filter((sheet) => sheet.longEnough).length;
  const about = (code: CautionCode, severity: Caution['severity']): Caution => ({
    code,
    severity,
    params: { wet, usable, testsNeeded, leastDwell: echo(leastDwell), tests: sheets.length - usable },
    source: 'astm-d4263',
  });
  return {
    verdict: wet > 0 ? 'fails' : usable < testsNeeded ? 'undecided' : 'meets',
    wet,
    usable,
    testsNeeded,
    cautions: [
      ...(wet > 0 ? [about('sheet-shows-moisture', 'caution')] : []),
      ...(usable < sheets.length ? [about('dwell-too-short', 'caution')] : []),
      ...(usable < testsNeeded ? [about('too-few-tests', 'caution')] : []),
      SHEET,
    ],
    basis: [
      basis('verdict', `moisture.${fn}`, 'no sheet with moisture', 'astm-d4263', {
        tests: sheets.length,
        floorArea,
        leastDwell,
      }),
    ],
  };
}
