// The template engine, for what is made seldom and is mostly markup: every template compiled once.
import nunjucks from 'nunjucks';
import { templateOptions } from './template-options.ts';
import { templateLoader } from './template-source.ts';

const engine = new nunjucks.Environment(templateLoader(), templateOptions);
const templates = new Map<string, nunjucks.Template>();

/** Renders one of the files in templates/; a value that is missing throws, for that is a fault of a template. */
export function renderTemplate(name: string, context: object): string {
  let template = templates.get(name);
  if (template === undefined) {
    template = engine.getTemplate(name, true);
    templates.set(name, template);
  }
  return template.render(context);
}
