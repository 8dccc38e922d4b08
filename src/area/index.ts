/**
 * Take-off: areas, edges and volumes from what a tape can reach.
 * @module area
 */
export { circleArea } from './circleArea.ts';
export type { CircleAreaInput } from './circleArea.ts';
export { coveHeight } from './coveHeight.ts';
export type { CoveHeightInput } from './coveHeight.ts';
export { padSideArea } from './padSideArea.ts';
export type { PadSideAreaInput } from './padSideArea.ts';
export { polygonArea } from './polygonArea.ts';
export type { PolygonAreaInput } from './polygonArea.ts';
export { polygonPerimeter } from './polygonPerimeter.ts';
export type { PolygonPerimeterInput } from './polygonPerimeter.ts';
export { quadrilateralArea } from './quadrilateralArea.ts';
export type { QuadrilateralAreaInput } from './quadrilateralArea.ts';
export { rectangleArea } from './rectangleArea.ts';
export type { RectangleAreaInput } from './rectangleArea.ts';
export { ringArea } from './ringArea.ts';
export type { RingAreaInput } from './ringArea.ts';
export { segmentArea } from './segmentArea.ts';
export type { SegmentAreaInput } from './segmentArea.ts';
export { slopedArea } from './slopedArea.ts';
export type { SlopedAreaInput } from './slopedArea.ts';
export { stairArea } from './stairArea.ts';
export type { StairAreaInput } from './stairArea.ts';
export { takeOff } from './takeOff.ts';
export type { LengthInBoth, TakeOff, TakeOffInput, TakeOffItem } from './takeOff.ts';
export { trapezoidArea } from './trapezoidArea.ts';
export type { TrapezoidAreaInput } from './trapezoidArea.ts';
export { triangleArea } from './triangleArea.ts';
export type { TriangleAreaInput } from './triangleArea.ts';
export { triangleAreaBySides } from './triangleAreaBySides.ts';
export type { TriangleAreaBySidesInput } from './triangleAreaBySides.ts';
export { wallArea } from './wallArea.ts';
export type { WallAreaInput } from './wallArea.ts';
export type { Corners, OutlineInput } from './outline.ts';
export type { FlatFields, FlatShape, PieceFields, Shape, ShapeName, StandingShape } from './shape.ts';
