/** Cautions that go with every answer by a rule for dry films. */
import type { Caution } from '../core/caution.ts';
import { citedOf, type BaseRule } from './readFilmRule.ts';

/** Says what of a rule is not from the standard itself. */
export function ruleCautions(rule: BaseRule): Caution[] {
  const { name, assumption = '' } = rule;
  const cited = citedOf(rule);
  const note = (code: Caution['code'], params: Caution['params'] = {}): Caution => ({
    code,
    severity: 'note',
    params,
    ...cited,
  });
  return [
    ...(cited.source === 'common-practice'
      ? []
      : [note('rule-not-from-standard', { rule: name, known: assumption })]),
    ...(cited.source === 'sspc-pa-9' ? [note('film-with-sand-not-measured')] : []),
  ];
}
