// content/sheets: which views, in which order, with which cautions, on which paper. A new sheet is one such file.
import { isBranch, type Tree } from '../../source/tree.ts';
import type { SheetDefinition } from '../content-model.ts';
import { jobKinds } from '../kinds/job.ts';
import { defineRecord } from '../kinds/record-kind.ts';
import { placeOf, refuse, type Desk, type Spot } from '../shapes/desk.ts';
import { entry, may, need, or } from '../shapes/fields.ts';
import { choice, id, list, mapOf, scalar, text } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';
import { applies } from './applies.ts';

type ViewUse = SheetDefinition['views'][number];

const optionMap = mapOf(text, 'options of the view');

/** A view alone, with one word (its option `of`), or with its options by name. */
const viewUse: Shape<ViewUse> = {
  read: (tree, spot, desk) => {
    if (!isBranch(tree)) {
      const view = scalar(tree, spot, desk);
      return view === undefined ? undefined : { view, options: {}, at: placeOf(desk, spot) };
    }
    const [name, second] = Object.keys(tree);
    if (name === undefined || second !== undefined) {
      return refuse(
        desk,
        spot,
        'value-not-text',
        'One view is expected in each entry.',
        'Write {view: {option: value}}.',
      );
    }
    const here = { up: spot, key: name };
    const options = optionsOf(tree[name] ?? null, here, desk);
    return options && { view: name, options, at: { ...placeOf(desk, here), atKey: true } };
  },
  told: {
    kind: 'either',
    of: [text.told, { kind: 'map', of: { kind: 'either', of: [text.told, optionMap.told] }, keys: 'the view' }],
  },
};

function optionsOf(tree: Tree, spot: Spot, desk: Desk): ViewUse['options'] | undefined {
  if (!isBranch(tree)) {
    const word = scalar(tree, spot, desk);
    return word === undefined ? {} : { of: word };
  }
  const found = optionMap.read(tree, spot, desk);
  return found && Object.fromEntries(found.map(({ key, value }) => [key, value]));
}

export const sheetsKind = defineRecord<SheetDefinition>({
  id: 'sheet',
  purpose: 'A printed sheet or a page of the site, as a list of views.',
  files: 'content/sheets/*.md',
  matches: (file) => /(?:^|\/)sheets\/.+\.md$/u.test(file),
  shape: andThen(
    entry({
      sheet: need(id, 'its permanent id', { example: 'torque-table' }),
      code: need(text, 'two or three letters, printed on every page', { example: 'TQ' }),
      title: need(text, 'its title'),
      per: need(choice('machine', 'planned job', 'job'), 'what one sheet is made for', { example: 'machine' }),
      on: or(list(choice('paper', 'screen')), ['paper', 'screen'], 'where it appears'),
      asked: or(
        choice('no', 'yes', 'handover'),
        'no',
        'made only when it is asked for by its name, as the workings are; `handover`: then, and for a next owner',
      ),
      section: need(text, 'entry of the site’s contents it is listed under', { example: 'Torque' }),
      paper: may(choice('a4', 'letter', 'a5', 'half-letter'), 'its paper, or as the machine says'),
      binding: or(choice('left', 'top'), 'left', 'the punched side'),
      foot: or(choice('none', 'sign off'), 'none', 'whether it has a foot to be filled in'),
      keptBy: may(list(choice(...jobKinds)), 'kinds of job whose record keeps what is written on it', {
        example: '[intake]',
      }),
      notFor: may(list(choice(...jobKinds)), 'kinds of planned job that get none of it', { example: '[intake]' }),
      carries: may(choice('data'), 'what its file carries besides its pages: the binder’s data'),
      applies: or(applies, {}, 'machines it is for'),
      views: need(list(viewUse), 'the views, in order'),
    }),
    ({ sheet, ...rest }) => ({ id: sheet, ...rest }),
  ),
});
