// Every problem code: one line each, permanent once published. Each has its example in content/pages/problems.md.
export const codes = {
  'yaml-broken': 'problem',
  'yaml-tab': 'problem',
  'yaml-key-twice': 'problem',
  'yaml-anchor': 'problem',
  'yaml-alias': 'problem',
  'yaml-tag': 'problem',
  'yaml-too-deep': 'problem',
  'front-matter-missing': 'problem',
  'front-matter-late': 'problem',
  'front-matter-open': 'problem',
  'front-matter-fence': 'problem',
  'front-matter-language': 'problem',
  'front-matter-not-keys': 'problem',
  'not-a-machine-folder': 'problem',
  'link-outside': 'problem',
  'record-too-large': 'problem',
  'file-not-text': 'problem',
  'file-not-read': 'query',
  'photo-not-a-picture': 'problem',
  'photo-broken': 'problem',
  'photo-too-large': 'problem',
  'output-not-ours': 'problem',
  'output-not-writable': 'problem',
  'output-in-machine-folder': 'problem',
} as const satisfies Record<string, 'problem' | 'query'>;

export type ProblemCode = keyof typeof codes;
