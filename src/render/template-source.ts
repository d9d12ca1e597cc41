// Where templates come from in development: the files, compiled at the start. The package puts compiled code in place of this module (see tools/templates.ts).
import nunjucks from 'nunjucks';
import { ownFolder } from './own-folder.ts';

/** The loader that the template engine asks for `phone.njk`. */
export function templateLoader(): nunjucks.ILoaderAny {
  return new nunjucks.FileSystemLoader(ownFolder('templates'));
}
