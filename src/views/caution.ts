// One caution, where the sheet asks for it.
import { cautionNamed } from './wording/caution.ts';
import { stack } from './wording/blocks.ts';
import { defineView } from './view.ts';

export const caution = defineView({
  id: 'caution',
  purpose: 'One caution, named by its id.',
  needs: 'machine',
  options: ['of'],
  blocks: (context) => stack(cautionNamed(context, context.options['of'] ?? '')),
});
