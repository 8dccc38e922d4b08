/** The film above the peaks, in m, that a volume leaves on an area; below 0 where the texture drinks more than that. */
export function filmAbovePeaks(
  volume_m3: number,
  area_m2: number,
  residueShare: number,
  texture_m: number,
): number {
  return (volume_m3 * (1 - residueShare)) / area_m2 - texture_m;
}
