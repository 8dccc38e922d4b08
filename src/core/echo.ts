/** What came in, as it stands in a basis: a copy as plain data, without −0 and without what was left out. */
export function echo(inputs: object): Readonly<Record<string, unknown>> {
  return JSON.parse(JSON.stringify(inputs)) as Readonly<Record<string, unknown>>;
}
