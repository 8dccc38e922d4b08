/** Area of the face of a dolly, in m². */
export function dollyArea(diameter_m: number): number {
  return (Math.PI / 4) * diameter_m * diameter_m;
}
