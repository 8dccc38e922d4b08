/** The lines of 29 CFR 1926.1153 Table 1 for the tools of a floor, controls in general terms. */

/** A tool of the table. */
export type SilicaTool =
  | 'walk-behind milling machine or floor grinder'
  | 'handheld grinder'
  | 'handheld grinder for mortar removal'
  | 'walk-behind saw'
  | 'handheld power saw'
  | 'handheld drill';
/** How the dust of a tool is held down. */
export type DustControl = 'water' | 'dust collector';
/** Where the work is done. */
export type WorkPlace = 'indoors' | 'outdoors';
/** What a tool, its collector or the place must have. */
export type SilicaControl =
  | 'water fed to the tool all the time'
  | 'shroud around the tool'
  | 'collector as the maker of the tool advises'
  | 'filter that holds back 99 % or more'
  | 'filter cleaning'
  | 'cyclone before the filter or filter cleaning'
  | 'collector airflow by the diameter of the wheel'
  | 'vacuum with a HEPA filter for loose dust between passes'
  | 'vacuum with a HEPA filter for cleaning holes'
  | 'exhaust until no dust is seen';

/** Least protection factor up to four hours and over four; 0 where no respirator is asked for. */
type Factors = readonly [upToFour: number, overFour: number];

/** One line of the table; a place that it does not name is not covered. */
interface SilicaLine {
  readonly controls: readonly SilicaControl[];
  readonly alsoIndoors?: readonly SilicaControl[];
  readonly indoors?: Factors;
  readonly outdoors?: Factors;
  /** Whether the flow of the collector goes by the wheel. */
  readonly byWheel?: true;
  readonly status?: 'memory';
}

/** 25 ft³/min for each inch of wheel, in m³/s for each m. */
export const AIR_PER_WHEEL = (25 * 0.0004719474432) / 0.0254;

const WET = ['water fed to the tool all the time'] as const;
const EXHAUST = ['exhaust until no dust is seen'] as const;
const SHROUD_AND_COLLECTOR = [
  'shroud around the tool',
  'collector airflow by the diameter of the wheel',
  'filter that holds back 99 % or more',
  'cyclone before the filter or filter cleaning',
] as const;

/** Each tool with the controls that the table has for it. */
export const SILICA_TABLE: Readonly<Record<SilicaTool, Readonly<Partial<Record<DustControl, SilicaLine>>>>> =
  {
    'walk-behind milling machine or floor grinder': {
      water: { controls: WET, alsoIndoors: EXHAUST, indoors: [0, 0], outdoors: [0, 0] },
      'dust collector': {
        controls: [
          'collector as the maker of the tool advises',
          'filter that holds back 99 % or more',
          'filter cleaning',
        ],
        alsoIndoors: [
          'vacuum with a HEPA filter for loose dust between passes',
          'exhaust until no dust is seen',
        ],
        indoors: [0, 0],
        outdoors: [0, 0],
      },
    },
    'handheld grinder': {
      water: { controls: WET, outdoors: [0, 0], status: 'memory' },
      'dust collector': {
        controls: SHROUD_AND_COLLECTOR,
        alsoIndoors: EXHAUST,
        indoors: [0, 10],
        outdoors: [0, 0],
        byWheel: true,
      },
    },
    'handheld grinder for mortar removal': {
      'dust collector': {
        controls: SHROUD_AND_COLLECTOR,
        alsoIndoors: EXHAUST,
        indoors: [10, 25],
        outdoors: [10, 25],
        byWheel: true,
        status: 'memory',
      },
    },
    'walk-behind saw': {
      water: {
        controls: WET,
        alsoIndoors: EXHAUST,
        indoors: [10, 10],
        outdoors: [0, 0],
        status: 'memory',
      },
    },
    'handheld power saw': {
      water: {
        controls: WET,
        alsoIndoors: EXHAUST,
        indoors: [10, 10],
        outdoors: [0, 10],
        status: 'memory',
      },
    },
    'handheld drill': {
      'dust collector': {
        controls: [
          'shroud around the tool',
          'collector as the maker of the tool advises',
          'filter that holds back 99 % or more',
          'filter cleaning',
          'vacuum with a HEPA filter for cleaning holes',
        ],
        alsoIndoors: EXHAUST,
        indoors: [0, 0],
        outdoors: [0, 0],
        status: 'memory',
      },
    },
  };
