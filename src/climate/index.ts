/**
 * Air and floor: dew point, humidity, pore air, heaters, and when a floor may be laid.
 * @module climate
 */
export { ambientLimits } from './ambientLimits.ts';
export type { AmbientLimits, AmbientLimitsInput, LimitFinding } from './ambientLimits.ts';
export type { ClosedReading, ClosedReason } from './closedReadings.ts';
export type { Bounds, LayingCondition, LayingConditions, LayingLimits } from './conditions.ts';
export { dewPoint } from './dewPoint.ts';
export type { DewPointInput } from './dewPoint.ts';
export { dewPointMargin } from './dewPointMargin.ts';
export type { DewPointMarginInput } from './dewPointMargin.ts';
export { evaporationRate } from './evaporationRate.ts';
export type { EvaporationRateInput } from './evaporationRate.ts';
export { frostPoint } from './frostPoint.ts';
export type { FrostPointInput } from './frostPoint.ts';
export { heaterExhaust } from './heaterExhaust.ts';
export type { HeaterExhaust, HeaterExhaustInput, HeaterFuel } from './heaterExhaust.ts';
export type { InstrumentErrors } from './instruments.ts';
export { layingWindows } from './layingWindows.ts';
export type {
  LayingTrend,
  LayingWindow,
  LayingWindows,
  LayingWindowsInput,
  ReadingGap,
} from './layingWindows.ts';
export { poreAirExpansion } from './poreAirExpansion.ts';
export type { PoreAirExpansionInput } from './poreAirExpansion.ts';
export { poreAirLayer } from './poreAirLayer.ts';
export type { PoreAirLayerInput } from './poreAirLayer.ts';
export { pressureAtAltitude } from './pressureAtAltitude.ts';
export type { PressureAtAltitudeInput } from './pressureAtAltitude.ts';
export type { Psychrometer, WickConditions } from './psychrometer.ts';
export { relativeHumidityFromDewPoint } from './relativeHumidityFromDewPoint.ts';
export type { RelativeHumidityFromDewPointInput } from './relativeHumidityFromDewPoint.ts';
export { relativeHumidityFromWetBulb } from './relativeHumidityFromWetBulb.ts';
export type { RelativeHumidityFromWetBulbInput } from './relativeHumidityFromWetBulb.ts';
export { saturationPressureOverIce } from './saturationPressureOverIce.ts';
export type { SaturationPressureOverIceInput } from './saturationPressureOverIce.ts';
export { saturationPressureOverWater } from './saturationPressureOverWater.ts';
export type { SaturationPressureOverWaterInput } from './saturationPressureOverWater.ts';
export { sealedPoreRise } from './sealedPoreRise.ts';
export type { SealedPoreRiseInput } from './sealedPoreRise.ts';
export type { ClimateReading } from './series.ts';
export { slabTimeConstant } from './slabTimeConstant.ts';
export type { SlabTimeConstantInput } from './slabTimeConstant.ts';
export { slabTrend } from './slabTrend.ts';
export type { SlabTrend, SlabTrendInput, SurfaceReading } from './slabTrend.ts';
export { surfaceHumidity } from './surfaceHumidity.ts';
export type { SurfaceHumidityInput } from './surfaceHumidity.ts';
export { timeToSlabTemperature } from './timeToSlabTemperature.ts';
export type { TimeToSlabTemperatureInput } from './timeToSlabTemperature.ts';
export type { Trend } from './trend.ts';
export { vapourDrive } from './vapourDrive.ts';
export type { VapourDriveInput } from './vapourDrive.ts';
export { wetBulb } from './wetBulb.ts';
export type { WetBulbInput } from './wetBulb.ts';
