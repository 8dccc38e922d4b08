/** Where a document can be damaged, and with what. */

export type Path = (string | number)[];

/** The path of every value inside a document. */
export function pathsIn(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  const inside = Object.entries(value).flatMap(([key, inner]) =>
    pathsIn(inner, [...path, Array.isArray(value) ? Number(key) : key]),
  );
  return [path, ...inside];
}

/** What stands for wrong values of every kind. */
export const WRONG: unknown[] = [
  undefined,
  null,
  NaN,
  Infinity,
  -1,
  0,
  1.5,
  1e308,
  '',
  '12',
  'furlong',
  'toString',
  true,
  [],
  {},
  [null],
  { value: 1, unit: 'ft' },
  { value: 1, unit: 'ft', note: 'about' },
  { value: 1, unit: 'min' },
  { value: 5, unit: 'degC' },
  { low: { value: 2, unit: '%' }, high: { value: 1, unit: '%' } },
  { low: { value: 1, unit: '%' }, high: { value: 2, unit: '%' }, mean: 1 },
];
