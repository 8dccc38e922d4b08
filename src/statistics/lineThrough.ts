import { total } from '../units/total.ts';
import { meanOf } from './readings.ts';

/** A straight line in plain numbers. */
export interface Line {
  /** Mean of the x. */
  readonly middle: number;
  /** Mean of the y, which is the line there. */
  readonly height: number;
  /** Sum of the squared distances from the middle; 0 where all points lie at one x, and there is no line. */
  readonly width: number;
  readonly slope: number;
  /** Sum of the squared distances of the points from the line. */
  readonly off: number;
}

/** The straight line of least squares through points, one y to each x. */
export function lineThrough(x: readonly number[], y: readonly number[]): Line {
  const [middle, height] = [meanOf(x), meanOf(y)];
  const width = total(x.map((one) => (one - middle) ** 2));
  const slope = total(x.map((one, i) => (one - middle) * ((y[i] as number) - height))) / width;
  const off = total(x.map((one, i) => ((y[i] as number) - height - slope * (one - middle)) ** 2));
  return { middle, height, width, slope, off };
}
