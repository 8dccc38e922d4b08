/** Small tools on plain data, for tests that walk through inputs and answers. */

export interface PlainQuantity {
  readonly value: number;
  readonly unit: string;
}

export function isQuantity(value: unknown): value is PlainQuantity {
  return (
    typeof value === 'object' &&
    value !== null &&
    typeof (value as PlainQuantity).value === 'number' &&
    typeof (value as PlainQuantity).unit === 'string'
  );
}

/** The value at a path such as `batches.0.area`. */
export function at(value: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>((v, key) => (v as Record<string, unknown> | undefined)?.[key], value);
}

/** A copy with the value at a path replaced. */
export function replaced(value: unknown, path: readonly (string | number)[], put: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return put;
  const copy = (Array.isArray(value) ? [...(value as unknown[])] : { ...(value as object) }) as Record<
    string,
    unknown
  >;
  if (rest.length === 0 && put === undefined)
    return Object.fromEntries(Object.entries(copy).filter(([k]) => k !== key));
  else copy[key] = replaced(copy[key], rest, put);
  return copy;
}

/** Every quantity inside a value, with its path. */
export function quantitiesIn(
  value: unknown,
  path: readonly (string | number)[] = [],
): [(string | number)[], PlainQuantity][] {
  if (typeof value !== 'object' || value === null) return [];
  // A quantity may carry its standard uncertainty, which is another one.
  if (isQuantity(value)) {
    const more = Object.entries(value).filter(([key]) => key !== 'value' && key !== 'unit');
    return [[[...path], value], ...quantitiesIn(Object.fromEntries(more), path)];
  }
  return Object.entries(value).flatMap(([key, inner]) =>
    quantitiesIn(inner, [...path, Array.isArray(value) ? Number(key) : key]),
  );
}

/** Every number inside a value, with its path. */
export function numbersIn(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, path ? `${path}.${key}` : key));
}

/** Every text inside a value. */
export function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
}
