/**
 * Area of a triangle from its sides, in the arrangement that keeps all digits for needles too; nothing where the sides
 * do not close.
 */
export function heron(one: number, two: number, three: number): number | undefined {
  const long = Math.max(one, two, three);
  const short = Math.min(one, two, three);
  // Picked, not computed: a subtraction would lose digits.
  const middle = Math.max(Math.min(one, two), Math.min(Math.max(one, two), three));
  const slack = short - (long - middle);
  if (!(slack > 0)) return undefined;
  return (
    Math.sqrt((long + (middle + short)) * slack * (short + (long - middle)) * (long + (middle - short))) / 4
  );
}
