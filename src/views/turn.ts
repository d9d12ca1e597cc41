// Begins a new page, or the back of the leaf.
import { defineView } from './view.ts';

export const turn = defineView({
  id: 'turn',
  purpose: 'Begins a new page, or the back of the leaf.',
  needs: 'machine',
  options: ['of'],
  blocks: ({ options }) => [{ type: 'break', to: options['of'] === 'back' ? 'back' : 'page' }],
});
