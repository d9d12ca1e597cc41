// The unit in which a box asks on this machine, where the content gives one for all machines.

/** What is measured with inch tools where the machine's units are. */
const inInches: Readonly<Record<string, string>> = { mm: 'in', bar: 'psi' };

/** `mm` as it is, or `in` on a machine of inches; units without a fellow, such as ml and V, stay as they are. */
export function askedUnit(units: 'metric' | 'imperial', unit: string): string {
  return units === 'imperial' ? (inInches[unit] ?? unit) : unit;
}
