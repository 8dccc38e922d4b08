/** Emission in g/(m²·24 h): what left an area in a time. */
export function emissionOf(mass_kg: number, area_m2: number, time_s: number): number {
  return (mass_kg * 1000 * 86_400) / (area_m2 * time_s);
}
