import type { Length, Share } from '../core/quantity.ts';
import type { CircleAreaInput } from './circleArea.ts';
import type { CoveHeightInput } from './coveHeight.ts';
import type { OutlineInput } from './outline.ts';
import type { PadSideAreaInput } from './padSideArea.ts';
import type { QuadrilateralAreaInput } from './quadrilateralArea.ts';
import type { RectangleAreaInput } from './rectangleArea.ts';
import type { RingAreaInput } from './ringArea.ts';
import type { SegmentAreaInput } from './segmentArea.ts';
import type { StairAreaInput } from './stairArea.ts';
import type { TrapezoidAreaInput } from './trapezoidArea.ts';
import type { TriangleAreaBySidesInput } from './triangleAreaBySides.ts';
import type { TriangleAreaInput } from './triangleArea.ts';
import type { WallAreaInput } from './wallArea.ts';

/** What a piece of floor of any form may say about itself. */
export interface PieceFields {
  /** What it is called on the sketch. */
  readonly name?: string | undefined;
  /** How many of it there are; one where not given. */
  readonly count?: number | undefined;
}

/** What a piece that lies flat or slopes may say besides. */
export interface FlatFields extends PieceFields {
  /** Rise over run where the sizes are those of a plan and the floor slopes. */
  readonly slope?: Share | undefined;
  /** Its outline as measured, where it does not follow from its sizes. */
  readonly outline?: Length | undefined;
  /**
   * How much of its outline joins another piece or a door, so that there is no edge. Nothing where not given; the
   * chord of a segment.
   */
  readonly open?: Length | undefined;
}

/** A piece that lies flat or slopes, by its form. */
export type FlatShape = FlatFields &
  (
    | ({ readonly shape: 'rectangle' } & Omit<RectangleAreaInput, 'unit'>)
    | ({ readonly shape: 'triangle' } & Omit<TriangleAreaInput, 'unit'>)
    | ({ readonly shape: 'triangle-by-sides' } & Omit<TriangleAreaBySidesInput, 'unit'>)
    | ({ readonly shape: 'trapezoid' } & Omit<TrapezoidAreaInput, 'unit'>)
    | ({ readonly shape: 'quadrilateral' } & Omit<QuadrilateralAreaInput, 'unit'>)
    | ({ readonly shape: 'circle' } & Omit<CircleAreaInput, 'unit'>)
    | ({ readonly shape: 'ring' } & Omit<RingAreaInput, 'unit'>)
    | ({ readonly shape: 'segment' } & Omit<SegmentAreaInput, 'unit'>)
    | ({ readonly shape: 'polygon' } & OutlineInput)
  );

/** A piece that stands up: stairs, the sides of a pad, a wall or upstand, a cove base. */
export type StandingShape = PieceFields &
  (
    | ({ readonly shape: 'stair' } & Omit<StairAreaInput, 'unit'>)
    | ({ readonly shape: 'pad-sides' } & Omit<PadSideAreaInput, 'unit'>)
    | ({ readonly shape: 'wall' } & Omit<WallAreaInput, 'unit'>)
    | ({ readonly shape: 'cove'; readonly length: Length } & Omit<CoveHeightInput, 'unit'>)
  );

/** A piece of floor to be added to a take-off or deducted from it, by its form. */
export type Shape = FlatShape | StandingShape;

/** The forms that a take-off knows. */
export type ShapeName = Shape['shape'];
