// Tread depth against a road rule, quoted with its citation.
import { millimetre } from '../quantity/units.ts';
import { published, table } from '../table/table.ts';
import { calculation } from './calculation.ts';
import { quantity, result, saying, words } from './input.ts';

export const treadDepth = calculation({
  id: 'tread-depth',
  name: 'Tread against a road rule',
  purpose: 'What is left of the tread above the least depth of the road rule chosen, quoted with its citation.',
  formula: 'left = depth − least depth',
  inputs: {
    depth: quantity('', 'least depth measured', millimetre, { low: 0, high: 20 }),
    rules: words('', 'road rules'),
  },
  outputs: {
    least: result('', 'least depth of the rule', millimetre, 1),
    left: result('', 'left above it', millimetre, 1),
    citation: saying('rule'),
  },
  range: 'The rule in force and the local authority decide; wear indicators and the maker’s limit come first.',
  source: 'As cited in the table of rules.',
  tables: ['tread-rules', 'values-tyres'],
  cautions: ['old-tyre'],
  example: { given: { depth: '2.5 mm', rules: 'uk' }, gives: { least: '1.0 mm', left: '1.5 mm' } },
  work: (given) => {
    const row = table('tread-rules').byId.get(given.words('rules'));
    const least = row === undefined ? undefined : published('tread-rules', row.id, 'depth', millimetre);
    if (row === undefined)
      given.doubt(
        'calculation-value-wrong',
        'no rule is held for “' +
          given.words('rules') +
          '”: ' +
          table('tread-rules')
            .rows.map((one) => one.id)
            .join(', '),
      );
    if (least !== undefined) given.use('', 'least depth', least);
    const depth = given.number('depth', millimetre);
    const millimetres = least === undefined ? undefined : least.quantity * 1000;
    return {
      least: millimetres,
      left: millimetres === undefined ? undefined : depth - millimetres,
      citation: row === undefined ? undefined : (row.cells['applies to'] ?? '') + ': ' + row.source,
    };
  },
});
