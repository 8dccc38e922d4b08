/**
 * Moisture of slabs: tests, vapour through slab and membrane, drying, and whether a barrier is needed.
 * @module moisture
 */
export { alkalinityTest } from './alkalinityTest.ts';
export type { AlkalinityResult, AlkalinityTestInput } from './alkalinityTest.ts';
export { barrierDecision } from './barrierDecision.ts';
export type {
  BarrierDecision,
  BarrierDecisionInput,
  BarrierFinding,
  BarrierMethod,
  MoistureFinding,
} from './barrierDecision.ts';
export { calciumChlorideTest } from './calciumChlorideTest.ts';
export type { CalciumChlorideDish, CalciumChlorideTestInput } from './calciumChlorideTest.ts';
export { combinedPermeance } from './combinedPermeance.ts';
export type { CombinedPermeanceInput } from './combinedPermeance.ts';
export type { MoistureMethod } from './count.ts';
export type { DryingSides } from './drying.ts';
export { dryingTime } from './dryingTime.ts';
export type { DryingRule, DryingTime, DryingTimeInput } from './dryingTime.ts';
export { emissionRate } from './emissionRate.ts';
export type { EmissionRateInput } from './emissionRate.ts';
export { equivalentAirLayer } from './equivalentAirLayer.ts';
export type { EquivalentAirLayerInput } from './equivalentAirLayer.ts';
export { exposedArea } from './exposedArea.ts';
export type { ExposedAreaInput } from './exposedArea.ts';
export { inSlabHumidityTest } from './inSlabHumidityTest.ts';
export type { HumidityProbe, InSlabHumidityTestInput } from './inSlabHumidityTest.ts';
export { layerPermeance } from './layerPermeance.ts';
export type { LayerPermeanceInput } from './layerPermeance.ts';
export { membranePermeance } from './membranePermeance.ts';
export type { MembranePermeanceInput } from './membranePermeance.ts';
export { plasticSheetTest } from './plasticSheetTest.ts';
export type { PlasticSheet, PlasticSheetResult, PlasticSheetTestInput } from './plasticSheetTest.ts';
export { probeDepth } from './probeDepth.ts';
export type { ProbeDepthInput } from './probeDepth.ts';
export { surfaceHygrometerTest } from './surfaceHygrometerTest.ts';
export type { HygrometerBox, SurfaceHygrometerTestInput } from './surfaceHygrometerTest.ts';
export { testCount } from './testCount.ts';
export type { TestCount, TestCountInput } from './testCount.ts';
export { vapourFlow } from './vapourFlow.ts';
export type { VapourFlowInput } from './vapourFlow.ts';
export type { WorstAssessment } from './worst.ts';
