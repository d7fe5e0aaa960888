/** The questions that a contractor asks about a job, in their order, as the address names them. */
export const QUESTION_KEYS = [
  'space',
  'faults',
  'causes',
  'drying',
  'works',
  'price',
  'proof',
  'years',
] as const;

export type QuestionKey = (typeof QUESTION_KEYS)[number];

export function isQuestionKey(text: string | undefined): text is QuestionKey {
  return (QUESTION_KEYS as readonly (string | undefined)[]).includes(text);
}
