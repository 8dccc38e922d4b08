/**
 * A whole floor: the document that describes it, and its plan.
 * @module plan
 */
export type { CoatBatches, CoatPlan } from './coatPlan.ts';
export type * from './FloorDocument.ts';
export type { PlanCaution } from './planCaution.ts';
export { planFloor } from './planFloor.ts';
export type { FloorPlan, Purchase, ZonePlan } from './planFloor.ts';
