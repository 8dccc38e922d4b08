/** What a mix, a coat and a floor say of their solvent in the same words. */
import type { Caution } from '../core/caution.ts';
import { hazard } from '../core/hazards.ts';
import type { Mass } from '../core/quantity.ts';

/** Solvent that leaves the film stays in the room as vapour. */
export function solventInTheAir(emitted: Mass): Caution {
  return hazard('solvent-in-the-air', 'niosh-npg-toluene', {
    emitted,
    lowerExplosiveLimit: { value: 1.1, unit: '%' },
  });
}
