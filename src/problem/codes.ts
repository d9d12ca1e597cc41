// Every problem code: one line each, permanent once published. Each has its example in content/pages/problems.md.
export const codes = {
  'yaml-broken': 'problem',
} as const satisfies Record<string, 'problem' | 'query'>;

export type ProblemCode = keyof typeof codes;
