import type { CautionCode } from '../core/caution.ts';

/** The English words for every caution. A name in braces stands for the parameter of that name. */
export const en: Readonly<Record<CautionCode, string>> = {
  'leftover-material':
    '{leftover} will be left of {name}. Keep it sealed and in part pairs; never pool what is left of A and B.',
};
