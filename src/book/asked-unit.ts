// The unit in which a box or a field asks on this machine, where content or calculation give one for all machines.

/** What is measured with inch tools, and read in miles and degrees Fahrenheit, where the machine's units are. */
const inInches: Readonly<Record<string, string>> = {
  mm: 'in',
  m: 'ft',
  bar: 'psi',
  'N·m': 'lbf·ft',
  '°C': '°F',
  km: 'mi',
  'km/h': 'mph',
};

/** Units by those that stand in their place on this machine; empty where all stay as they are. */
export function unitsInstead(units: 'metric' | 'imperial'): Readonly<Record<string, string>> {
  return units === 'imperial' ? inInches : {};
}

/** `mm` as it is, or `in` on a machine of inches; units without a fellow, such as ml and V, stay as they are. */
export function askedUnit(units: 'metric' | 'imperial', unit: string): string {
  return unitsInstead(units)[unit] ?? unit;
}
