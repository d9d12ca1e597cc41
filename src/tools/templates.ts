// Compiles the templates beforehand, so that the package neither reads nor compiles them when it starts.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import nunjucks from 'nunjucks';
import type { Plugin } from 'esbuild';
import { templateOptions } from '../render/template-options.ts';

/** The module that takes the place of render/template-source.ts: every template of the folder as code. */
export function compiledTemplates(folder: string): string {
  const environment = new nunjucks.Environment(null, templateOptions);
  const templates = templateNames(folder).map((name) => {
    const source = readFileSync(join(folder, name), 'utf8');
    return nunjucks.precompileString(source, { name, env: environment, wrapper: asProperty });
  });
  return [
    '// Made by src/tools/templates.ts from templates/; not edited by hand.',
    "import nunjucks from 'nunjucks';",
    `const code = {\n${templates.join(',\n')}\n};`,
    'export const templateLoader = () => new nunjucks.PrecompiledLoader(code);',
    '',
  ].join('\n');
}

/** Names below the folder, with forward slashes, in stable order, so that the same templates give the same bytes. */
function templateNames(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => name.endsWith('.njk'))
    .toSorted();
}

/** nunjucks hands over a list of one template with its code, though its types say a single one. */
function asProperty(templates: unknown): string {
  const [template] = [templates].flat();
  return isCompiled(template) ? `${JSON.stringify(template.name)}: (() => {\n${template.template}\n})()` : '';
}

function isCompiled(value: unknown): value is { readonly name: string; readonly template: string } {
  return typeof value === 'object' && value !== null && 'name' in value && 'template' in value;
}

/** For the bundle: puts the compiled templates, and the short runtime of nunjucks that has no compiler, in place. */
export function compiledTemplatesPlugin(folder: string): Plugin {
  return {
    name: 'compiled-templates',
    setup(build) {
      build.onLoad({ filter: /render[\\/]template-source\.ts$/ }, () => ({
        contents: compiledTemplates(folder),
        loader: 'js',
        resolveDir: folder,
      }));
      build.onResolve({ filter: /^nunjucks$/ }, async (asked) =>
        asked.pluginData === 'short'
          ? null
          : build.resolve('nunjucks/browser/nunjucks-slim.js', {
              kind: asked.kind,
              resolveDir: folder,
              pluginData: 'short',
            }),
      );
    },
  };
}
