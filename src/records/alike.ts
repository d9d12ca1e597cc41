// Whether two plain values say the same: data of records, with no functions and no rings in them.

/** Deep equality; the very same object is the same at once, as units are. */
export function isAlike(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (!isObject(one) || !isObject(other)) return false;
  if (Array.isArray(one)) return Array.isArray(other) && isListAlike(one, other);
  const keys = Object.keys(one);
  return (
    !Array.isArray(other) &&
    keys.length === Object.keys(other).length &&
    keys.every((key) => key in other && isAlike(one[key], other[key]))
  );
}

function isListAlike(one: readonly unknown[], other: readonly unknown[]): boolean {
  return one.length === other.length && one.every((each, index) => isAlike(each, other[index]));
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
