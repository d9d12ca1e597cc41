// Which rules of HTML and accessibility the pages are held to.
import type { ConfigData } from 'html-validate';

export const validateOptions: ConfigData = {
  extends: ['html-validate:recommended', 'html-validate:a11y'],
  rules: {
    'doctype-style': ['error', { style: 'lowercase' }],
    'no-trailing-whitespace': 'off',
    // Titles are the owner's.
    'long-title': 'off',
  },
};
