// A number of things, in words for a message.

/** `1 sheet`, `9 sheets`, `no sheets`. */
export function count(number: number, one: string, many = one + 's'): string {
  if (number === 0) return 'no ' + many;
  return number === 1 ? '1 ' + one : String(number) + ' ' + many;
}
