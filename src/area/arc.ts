/** The arc over a chord: its radius and the angle it spans at its centre, in rad. */
export function arc(chord: number, rise: number): { radius: number; angle: number } {
  return {
    radius: (chord * (chord / rise)) / 8 + rise / 2,
    angle: 4 * Math.atan((2 * rise) / chord),
  };
}
