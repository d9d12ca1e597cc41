// Every sheet that a job keeps, as a form: the same rules of archives and reading aids as the printed sheets.
import { describe, expect, it } from 'vitest';
import { fileFaults } from '../pdf/file-rules.ts';
import { jobForms, machines } from './job-forms.ts';

describe.each(machines)('the forms of %s', (machine) => {
  it('keep the rules', async () => {
    const forms = await jobForms(machine);
    expect(forms.length).toBeGreaterThan(1);
    for (const { sheet, bytes } of forms)
      expect({ sheet: sheet.id, faults: await fileFaults(bytes) }).toEqual({ sheet: sheet.id, faults: [] });
  });
});
