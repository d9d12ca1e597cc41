// Evening 10 over two machine folders: the carburettor and the tank go from the donor to the rider; each side tells it, and it is paid for once.
import { rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { buildShed, named, pageText, record, shed } from './shed.ts';

let folder = '';
afterEach(() => rmSync(dirname(folder), { recursive: true, force: true }));

const donor = {
  'machine.yaml': named('Pipit 175', 'LP175-04417'),
  'jobs/2026-01-01-bought.md': record(
    'Bought for its parts',
    '2026-01-01',
    'money: [{paid: 150.00 GBP, for: the donor, group: buying}]',
  ).replace('kind: repair', 'kind: buying'),
  'jobs/2026-05-01-out.md': record(
    'Carburettor out',
    '2026-05-01',
    'work: [{removed: carburettor}]\nparts: [{part: carburettor, moved to: rider}]',
  ),
  'jobs/2026-05-08-tank.md': record(
    'Tank off',
    '2026-05-08',
    'work: [{removed: petrol tank}]\nparts: [{part: petrol tank, moved to: rider}]',
  ),
};
const rider = {
  'machine.yaml': named('Wagtail 125', 'LW125-01234'),
  'jobs/2026-05-03-in.md': record(
    'Carburettor in',
    '2026-05-03',
    'parts: [{part: carburettor, class: used, moved from: donor, price: 40.00 GBP, state: fitted}]',
  ),
};

test('10: each part appears with its days on both, is on one machine at a time, and costs once', async () => {
  folder = shed({ donor, rider });
  const { code, said, out } = await buildShed(folder);
  expect(code).toBe(0);
  const front = pageText(join(out, 'index.html'));
  expect(front).toMatch(/8 May 2026 petrol tank Pipit 175 to rider .*3 May 2026 carburettor Wagtail 125 from donor/u);
  expect(front).toMatch(/1 May 2026 carburettor Pipit 175 to rider/u);
  // The tank left and nobody wrote that it came: the carburettor is told on both sides and asked about on none.
  expect(front).toContain('petrol tank went to rider on 8 May 2026, and the records there do not say that it came');
  expect(front).not.toMatch(/carburettor went to/u);
  expect(said).toContain('donor/jobs/2026-05-08-tank.md:8:9 move-told-once');
  const history = (machine: string, job: string) => pageText(join(out, machine, 'jobs', `${job}.html`));
  expect(history('donor', '2026-05-01-out')).toContain('moved to rider');
  expect(history('rider', '2026-05-03-in')).toContain('moved from donor');
  expect(pageText(join(out, 'donor/costs.html'))).toMatch(/Together:? 150\.00 GBP/u);
  expect(pageText(join(out, 'rider/costs.html'))).toMatch(/Together:? 0\.00 GBP/u);
  // The donor stands at less, as far as somebody said by how much: the carburettor was set on the rider's side, the tank on neither.
  expect(front).toContain(
    'Pipit 175: 150.00 GBP paid, ordered and agreed, fees apart; 40.00 GBP set for parts that left; what is left in it is not known: no worth that counts for petrol tank',
  );
  expect(front).toContain(
    'Wagtail 125: 0.00 GBP paid, ordered and agreed, fees apart; 40.00 GBP set for parts that came; 40.00 GBP left in it',
  );
});

test('10: the donor’s value falls by what was set for each part, and what one side set counts for both', async () => {
  folder = shed({
    donor: {
      ...donor,
      'jobs/2026-05-08-tank.md': donor['jobs/2026-05-08-tank.md'].replace(
        'moved to: rider',
        'moved to: rider, worth: 25.00 GBP',
      ),
    },
    rider: {
      ...rider,
      'jobs/2026-05-08-tank.md': record(
        'Tank on',
        '2026-05-08',
        'parts: [{part: petrol tank, moved from: donor, state: fitted}]',
      ),
    },
  });
  const { code, out } = await buildShed(folder);
  expect(code).toBe(0);
  const front = pageText(join(out, 'index.html'));
  expect(front).toContain(
    'Pipit 175: 150.00 GBP paid, ordered and agreed, fees apart; 65.00 GBP set for parts that left; 85.00 GBP left in it',
  );
  expect(front).toContain(
    'Wagtail 125: 0.00 GBP paid, ordered and agreed, fees apart; 65.00 GBP set for parts that came; 65.00 GBP left in it',
  );
  // By itself the donor's binder knows what its own records say.
  expect(pageText(join(out, 'donor/costs.html'))).toMatch(
    /Parts that moved between machines: 150\.00 GBP paid, ordered and agreed, fees apart; 25\.00 GBP set for parts that left; what is left in it is not known: no worth that counts for carburettor/u,
  );
  expect(pageText(join(out, 'donor/costs.html'))).toMatch(/Together:? 150\.00 GBP/u);
});

test('10: a day that puts a part on two machines at once is asked about in the build, and answered by its record', async () => {
  const early = record(
    'Carburettor in',
    '2026-04-20',
    'parts: [{part: carburettor, moved from: donor, state: fitted}]',
  );
  folder = shed({
    donor: { 'machine.yaml': donor['machine.yaml'], 'jobs/2026-05-01-out.md': donor['jobs/2026-05-01-out.md'] },
    rider: { 'machine.yaml': rider['machine.yaml'], 'jobs/2026-04-20-in.md': early },
  });
  const { said, out } = await buildShed(folder);
  const words = 'carburettor is here since 2026-04-20, and left donor only on 2026-05-01: on two machines between';
  expect(said).toContain(words);
  expect(pageText(join(out, 'index.html'))).toContain(
    'carburettor is here since 20 April 2026, and left donor only on 1 May 2026: on two machines between',
  );
});
