import { echo } from '../core/echo.ts';
import type { Caution, CautionCode } from '../core/caution.ts';
import { SHARE } from '../core/dimensions.ts';
import type { Quantity } from '../core/quantity.ts';
import { write } from '../core/read.ts';

/** How far a part comes out against the first, either way, as a share. */
export interface BaseOff {
  /** With everything read exactly. */
  readonly exact: number;
  /** With both readings a step wrong against each other. */
  readonly misread: number;
}

/**
 * The caution for a part whose ratio a reading moves: by more than the tolerance, or by how much where none was given
 * to judge it by. Nothing where the tolerance bears it.
 */
export function readingCaution(
  fn: string,
  name: string,
  graduation: Quantity,
  { exact, misread }: BaseOff,
  tolerance: number | undefined,
): Caution[] {
  const percent = (share: number) => write(fn, share, SHARE, '%');
  const caution = (code: CautionCode, off: number): Caution[] => {
    const limit = tolerance !== undefined && { tolerance: percent(tolerance) };
    const params = { name, graduation: echo(graduation), off: percent(off), ...limit };
    return [{ code, severity: 'caution', params, source: 'common-practice' }];
  };
  if (tolerance === undefined) return caution('reading-not-judged', misread);
  const beyond = (off: number) => off > tolerance * (1 + 1e-12);
  if (beyond(exact)) return caution('marks-off-ratio', exact);
  return beyond(misread) ? caution('reading-moves-ratio', misread) : [];
}
