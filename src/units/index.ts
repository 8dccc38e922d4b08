/**
 * Quantities in any unit: convert, add and compare them, read and write them as people do.
 * @module units
 */
export { add } from './add.ts';
export type { AddendUnit, AddInput } from './add.ts';
export { compare } from './compare.ts';
export type { CompareInput } from './compare.ts';
export { convert } from './convert.ts';
export type { ConvertInput } from './convert.ts';
export { describeUnit } from './describeUnit.ts';
export type { UnitDescription } from './describeUnit.ts';
export { formatQuantity } from './formatQuantity.ts';
export type { FormatQuantityInput } from './formatQuantity.ts';
export { isUnitOf } from './isUnitOf.ts';
export { parseQuantity } from './parseQuantity.ts';
export type { ParseQuantityInput } from './parseQuantity.ts';
export { scale } from './scale.ts';
export type { ScalableUnit, ScaleInput } from './scale.ts';
export { scaleRange } from './scaleRange.ts';
export type { ScaleRangeInput } from './scaleRange.ts';
export { subtract } from './subtract.ts';
export type { RemainderUnit, SubtractInput, SubtrahendUnit } from './subtract.ts';
export { sum } from './sum.ts';
export type { SumInput } from './sum.ts';
export { sumRanges } from './sumRanges.ts';
export type { SumRangesInput } from './sumRanges.ts';
export { unitsOf } from './unitsOf.ts';
