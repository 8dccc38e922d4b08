/**
 * Readings and how well they are known: means, intervals, uncertainty by the GUM, and conformity with guard bands.
 * @module statistics
 */
export { arithmeticMean } from './arithmeticMean.ts';
export type { ArithmeticMeanInput } from './arithmeticMean.ts';
export { coefficientOfVariation } from './coefficientOfVariation.ts';
export type { CoefficientOfVariationInput } from './coefficientOfVariation.ts';
export { conformanceProbability } from './conformanceProbability.ts';
export type { ConformanceProbabilityInput } from './conformanceProbability.ts';
export type { Correlation } from './correlation.ts';
export { coverageFactor } from './coverageFactor.ts';
export type { CoverageFactorInput } from './coverageFactor.ts';
export { expandedUncertainty } from './expandedUncertainty.ts';
export type { ExpandedUncertaintyInput } from './expandedUncertainty.ts';
export { guardedConformity } from './guardedConformity.ts';
export type { GuardedConformity, GuardedConformityInput } from './guardedConformity.ts';
export { lagOneAutocorrelation } from './lagOneAutocorrelation.ts';
export type { LagOneAutocorrelationInput } from './lagOneAutocorrelation.ts';
export { leastSquaresLine } from './leastSquaresLine.ts';
export type { LeastSquaresLine, LeastSquaresLineInput, LinePoint } from './leastSquaresLine.ts';
export { normalToleranceFactor } from './normalToleranceFactor.ts';
export type { NormalToleranceFactorInput } from './normalToleranceFactor.ts';
export { normalToleranceInterval } from './normalToleranceInterval.ts';
export type { NormalToleranceInterval, NormalToleranceIntervalInput } from './normalToleranceInterval.ts';
export { propagate } from './propagate.ts';
export type { Propagated, PropagateInput, Sensitivity, WithUncertainty } from './propagate.ts';
export type { Confidence, ReadingError } from './readingError.ts';
export { readingsNeeded } from './readingsNeeded.ts';
export type { ReadingsNeeded, ReadingsNeededInput } from './readingsNeeded.ts';
export { sampleStandardDeviation } from './sampleStandardDeviation.ts';
export type { DeviatingUnit, SampleStandardDeviationInput } from './sampleStandardDeviation.ts';
export type { ToleranceSides } from './sides.ts';
export type { Specification } from './specification.ts';
export { studentInterval } from './studentInterval.ts';
export type { StudentInterval, StudentIntervalInput } from './studentInterval.ts';
export { typeAUncertainty } from './typeAUncertainty.ts';
export type { TypeAUncertaintyInput } from './typeAUncertainty.ts';
export { typeBUncertainty } from './typeBUncertainty.ts';
export type { BoundedDistribution, TypeBUncertaintyInput } from './typeBUncertainty.ts';
export type { StandardUncertainty, StepUnit, Uncertain } from './uncertain.ts';
export { uncertaintyFromExpanded } from './uncertaintyFromExpanded.ts';
export type { UncertaintyFromExpandedInput } from './uncertaintyFromExpanded.ts';
