// gray-matter splits a head that is not plain (`---yaml`, spaces behind the fence). It only splits: nothing in a record is ever run.
import { grayMatterPackage } from './slow-parser.ts';

/** gray-matter runs `---js` front matter unless told not to; any of its engines being reached is a bug of ours. */
const never = {
  parse: (): never => {
    throw new Error('a front matter engine was reached that must never run');
  },
};
const engines = { js: never, javascript: never, json: never, coffee: never, toml: never, cson: never };

/** The YAML between the fences of `head`, which ends with its closing fence. */
export function betweenFences(head: string): string {
  const matter = grayMatterPackage();
  let yaml = '';
  const keep = {
    parse: (between: string): object => {
      yaml = between;
      return {};
    },
  };
  // The options are not only for the engines: called without them, gray-matter hands out one shared object per text.
  matter(head, { language: 'yaml', engines: { ...engines, yaml: keep, yml: keep, YAML: keep } });
  return yaml.replace(/^\n/u, '');
}
