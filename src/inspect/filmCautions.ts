/** Cautions that go with every answer by a rule for dry films. */
import type { Caution } from '../core/caution.ts';
import type { BaseRule } from './readFilmRule.ts';

/** Says what of a rule is not from the standard itself. */
export function ruleCautions({ name, source, assumption = '' }: BaseRule): Caution[] {
  const note = (code: Caution['code'], params: Caution['params'] = {}): Caution => ({
    code,
    severity: 'note',
    params,
    source,
  });
  return [
    ...(source === 'common-practice'
      ? []
      : [note('rule-not-from-standard', { rule: name, known: assumption })]),
    ...(source === 'sspc-pa-9' ? [note('film-with-sand-not-measured')] : []),
  ];
}
