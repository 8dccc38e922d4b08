/** Molar gas constant in kJ/(mol·K): exact since 2019. */
export const GAS_CONSTANT = 8.31446261815324e-3;

/** What the scale of absolute temperature shows at 0 °C. */
export const ZERO_CELSIUS = 273.15;

/** How many times faster a reaction of this activation energy (kJ/mol) runs at one temperature than at another, in °C. */
export function arrheniusFactor(energy: number, from: number, to: number): number {
  return Math.exp((energy / GAS_CONSTANT) * (1 / (from + ZERO_CELSIUS) - 1 / (to + ZERO_CELSIUS)));
}
