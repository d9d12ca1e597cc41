// How templates are compiled: what is missing is a fault, and every text is escaped unless a filter made it.
export const templateOptions = {
  autoescape: true,
  throwOnUndefined: true,
  trimBlocks: true,
  lstripBlocks: true,
} as const;
