/** What shows only when the coats are looked at together: whether each room is covered, and each coat after the one beneath. */
import type { Caution } from '../core/caution.ts';
import { readInstant } from '../core/instant.ts';
import type { CoatPlan } from './coatPlan.ts';

/** A caution for a room that no coat covers. */
export function uncovered(zone: string, coats: readonly CoatPlan[]): readonly Caution[] {
  return coats.some(({ zones }) => zones.includes(zone)) ? [] : [about('zone-without-coat', { zone })];
}

/** A caution for each coat of the list beneath the coat `i` that is not all down, somewhere under it, when it is begun. */
export function tooEarly(coats: readonly CoatPlan[], i: number): readonly Caution[] {
  const { name: coat, zones, batches } = coats[i] as CoatPlan;
  const start = batches?.clock?.batches[0]?.start.at;
  return coats.slice(0, i).flatMap((beneath) => {
    const down = beneath.batches?.clock?.batches.at(-1)?.downBy.at;
    const lies = beneath.zones.some((zone) => zones.includes(zone));
    if (!lies || start === undefined || down === undefined || moment(start) >= moment(down)) return [];
    return [about('coat-before-one-beneath', { coat, start, beneath: beneath.name, down })];
  });
}

/** An instant as a number that can be compared, whatever its offset. */
function moment(at: string): number {
  return readInstant('planFloor', 'start', at).ms;
}

function about(code: 'zone-without-coat' | 'coat-before-one-beneath', params: Caution['params']): Caution {
  return { code, severity: 'caution', params, source: 'common-practice' };
}
