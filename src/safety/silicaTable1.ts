import { basis, fromMemory } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { FLOW, LENGTH, TIME } from '../core/dimensions.ts';
import { hazard, SILICA_DUST } from '../core/hazards.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Length, Quantity, Time } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import { readChoice, readKey, readNames, readObject, readObjects } from '../core/readPlain.ts';
import type { FlowUnit, TimeUnit } from '../core/unitCodes.ts';
import { DAY_S } from './limits.ts';
import {
  AIR_PER_WHEEL,
  SILICA_TABLE,
  type DustControl,
  type SilicaControl,
  type SilicaTool,
  type WorkPlace,
} from './silicaTable.ts';

/** A task of the table, as it is to be done. */
export interface SilicaTask {
  /** What is done; no other task has this name. */
  readonly name: string;
  /** The tool. Scarifiers and planers that are walked behind count as milling machines. */
  readonly tool: SilicaTool;
  /** How its dust is held down: water fed to the tool, or a collector. */
  readonly control: DustControl;
  /** Indoors stands for any enclosed place. */
  readonly place: WorkPlace;
  /** How long in the shift. */
  readonly duration: Time;
  /** Diameter of the wheel; due for a handheld grinder with a collector. */
  readonly wheelDiameter?: Length | undefined;
}

/** Input of {@link silicaTable1}. */
export interface SilicaTable1Input<T extends TimeUnit = TimeUnit, F extends FlowUnit = FlowUnit> {
  /** Every task of the table that one worker does in the shift. */
  readonly tasks: readonly SilicaTask[];
  /** Units of the answer. */
  readonly units: { readonly time: T; readonly flow: F };
}

/** What the table asks for one task. */
export interface SilicaRequirement<F extends FlowUnit = FlowUnit> {
  /** Name of the task. */
  readonly name: string;
  /** Whether the table has this tool with this control at this place. Where not, the exposure has to be measured. */
  readonly covered: boolean;
  /** What the tool and its collector must have. */
  readonly controls: readonly SilicaControl[];
  /** Least assigned protection factor (APF) of the respirator. Missing where the table asks for none. */
  readonly protectionFactor?: number | undefined;
  /** Least flow of the collector, for a handheld grinder. */
  readonly airflow?: Quantity<F> | undefined;
  /** Given where this line of the table was not read but is quoted from memory. */
  readonly status?: 'memory' | undefined;
}

/** Answer of {@link silicaTable1}. */
export interface SilicaTable1<T extends TimeUnit = TimeUnit, F extends FlowUnit = FlowUnit> {
  /** Hours of all tasks of the table together. */
  readonly total: Quantity<T>;
  /** Whether that is more than four hours: then every task takes the stricter column, also a short one. */
  readonly overFourHours: boolean;
  /** Task by task. */
  readonly tasks: readonly SilicaRequirement<F>[];
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/** With room for the round-off of hours that are just that. */
const FOUR_HOURS_S = 14_400.000_000_014_4;

/**
 * What the US table of dust controls asks for each task of a shift: what the tool must have, and which respirator.
 *
 * The hours of all tasks of the table are added. Who follows the table in full need not measure; any other way must.
 *
 * @formula
 * ```math
 * \sum_i T_i > 4\,\mathrm{h} \Rightarrow \text{second column for every task} \qquad Q = 25\,\tfrac{\mathrm{ft^3/min}}{\mathrm{in}} \cdot d
 * ```
 * @units times, length; answers time, flows and protection factors.
 * @validRange durations above 0 and together no more than 24 h; wheelDiameter above 0.
 * @accuracy A lookup; exactly four hours are not more than four. Lines that were not read are marked.
 * @source osha-1926-1153
 * @param input - The tasks and the units wanted.
 * @returns Total hours, and for each task its controls, its respirator and the flow of its collector.
 * @throws An `InputError` that names the field; `conflict` where the tasks take more than 24 hours.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * const shift = safety.silicaTable1({
 *   tasks: [
 *     {
 *       name: 'field',
 *       tool: 'walk-behind milling machine or floor grinder',
 *       control: 'dust collector',
 *       place: 'indoors',
 *       duration: { value: 4, unit: 'h' },
 *     },
 *     {
 *       name: 'edges',
 *       tool: 'handheld grinder',
 *       control: 'dust collector',
 *       place: 'indoors',
 *       duration: { value: 30, unit: 'min' },
 *       wheelDiameter: { value: 7, unit: 'in' },
 *     },
 *   ],
 *   units: { time: 'h', flow: 'ft3/min' },
 * });
 * // Half an hour of edges takes a respirator because of the four hours before.
 * shift.tasks.map(({ protectionFactor }) => protectionFactor); // => [undefined, 10]
 * shift.tasks[1]?.airflow?.value.toFixed(0); // => '175'
 * ```
 */
export function silicaTable1<T extends TimeUnit, F extends FlowUnit>(
  input: SilicaTable1Input<T, F>,
): SilicaTable1<T, F> {
  const fn = 'silicaTable1';
  const given = fields(fn, input);
  const { tasks } = given;
  const units = readObject(fn, 'units', given.units);
  const shift = readObjects(fn, 'tasks', tasks, 1).map((task, i) => readTask(fn, task, i));
  const total_s = shift.reduce((sum, { time_s }) => sum + time_s, 0);
  if (total_s > DAY_S) refuse(fn, 'conflict', ['tasks'], 'no more than 24 hours of tasks in a day', tasks);
  readNames(fn, tasks, ['tasks']);
  const overFourHours = total_s > FOUR_HOURS_S;
  const flow = (m3PerS: number) => write(fn, m3PerS, FLOW, units.flow, ['units', 'flow']);
  flow(0);

  const asked = shift.map(({ name, place, line, wheel_m }): SilicaRequirement<F> => {
    const factors = line?.[place];
    if (!line || !factors) return { name, covered: false, controls: [] };
    const factor = factors[overFourHours ? 1 : 0];
    return {
      name,
      covered: true,
      controls: [...line.controls, ...(place === 'indoors' ? (line.alsoIndoors ?? []) : [])],
      ...(factor > 0 && { protectionFactor: factor }),
      ...(wheel_m !== undefined && { airflow: flow(AIR_PER_WHEEL * wheel_m) }),
      ...(line.status && { status: line.status }),
    };
  });
  const factors = asked.flatMap(({ protectionFactor }) => protectionFactor ?? []);
  const uncovered = asked.filter(({ covered }) => !covered).map(({ name }) => name);
  const said = <S extends Basis | Caution>(one: S) =>
    asked.some(({ status }) => status === 'memory') ? fromMemory(one) : one;
  return {
    total: write(fn, total_s, TIME, units.time, ['units', 'time']),
    overFourHours,
    tasks: asked,
    cautions: [
      ...(uncovered.length > 0
        ? [hazard('not-in-table-1', 'osha-1926-1153', { tasks: uncovered.join(', ') })]
        : []),
      ...(factors.length > 0
        ? [said(hazard('wear-respirator', 'osha-1926-1153', { factor: Math.max(...factors) }))]
        : []),
      SILICA_DUST,
    ],
    basis: [
      said(
        basis(
          'tasks',
          'safety.silicaTable1',
          'line of the table by tool, control and place; column by the hours of all tasks',
          'osha-1926-1153',
          { tasks },
        ),
      ),
    ],
  };
}

/** Reads a task and finds its line. */
function readTask(fn: string, task: SilicaTask, i: number) {
  const path = ['tasks', i];
  const lines = SILICA_TABLE[readKey(fn, 'tool', task.tool, SILICA_TABLE, path)];
  const control = readChoice(fn, 'control', task.control, ['water', 'dust collector'], path);
  const place = readChoice(fn, 'place', task.place, ['indoors', 'outdoors'], path);
  const time_s = read(fn, 'duration', task.duration, TIME, POSITIVE, path);
  const line = lines[control];
  const wheel_m =
    line?.byWheel || task.wheelDiameter !== undefined
      ? read(fn, 'wheelDiameter', task.wheelDiameter, LENGTH, POSITIVE, path)
      : undefined;
  return { name: task.name, place, time_s, line, wheel_m: line?.byWheel ? wheel_m : undefined };
}
