/**
 * What every other module is built of: quantities, ranges, refusals, verdicts and cautions.
 * @module core
 */
export { across } from './across.ts';
export type { AcrossAnswer, AcrossInput } from './across.ts';
export type { Assessment, Verdict } from './assessment.ts';
export { attempt } from './attempt.ts';
export type { Attempt } from './attempt.ts';
export { between } from './between.ts';
export type { Basis, Caution, CautionCode } from './caution.ts';
export type { DimensionName, Unit, UnitsByDimension } from './dimensionOf.ts';
export type { FieldValue, RoundingDirection } from './fieldValue.ts';
export { InputError } from './InputError.ts';
export type { InputErrorCode, InputIssue, InputPath } from './InputError.ts';
export type { Instant } from './instant.ts';
export { monotone } from './monotone.ts';
export type { Direction, Directions, Formula } from './monotone.ts';
export type * from './quantity.ts';
export type { Range, Ranged } from './range.ts';
export type * from './unitCodes.ts';
