// The workshop book of the evenings' machine: invented, as small as the evenings need.

/** maker/book.yaml; `lines` are added to a list by its key, `torque` is that of the head nuts. */
export function wagtailBook(
  more: { readonly fasteners?: string; readonly settings?: string; readonly services?: string } = {},
  torque = '22 N·m',
): string {
  return `splitpin: 1
source: {title: Wagtail workshop book, edition: 1974, page: 12}
fasteners:
  - {id: cylinder-head-nut, name: Cylinder head nuts, of: cylinder head, thread: M8x1.25, count: 4, torque: "${torque}", threads: dry, order: crosswise}
  - {id: rear-spindle-nut, name: Rear spindle nut, of: rear wheel, thread: M14x1.5, count: 1, torque: 60 N·m, locking: split pin}
  - {id: kickstart-cover-screw, name: Kickstart cover screws, of: kickstart cover, thread: M6x1.0, lengths: {25 mm: 3, 45 mm: 2}, duty: cover, class: "4.8", into: aluminium}
  - {id: brake-plate-stud, name: Rear brake plate stud, of: rear brake plate, thread: M8x1.25, torque: 20 N·m}
${more.fasteners ?? ''}limits:
  - {id: compression, name: Compression, unit: bar, standard: 9.0 to 10.0 bar, limit: 7.0 bar min, condition: "cold, dry"}
  - {id: bore, name: Cylinder bore, of: barrel, unit: mm, standard: 56.00 to 56.02 mm, limit: 56.10 mm max}
settings:
  - {id: points-gap, name: Points gap, value: 0.35 mm, range: 0.30 to 0.40 mm, disturbs: [ignition-timing]}
  - {id: ignition-timing, name: Ignition timing, value: 2.1 mm, range: 2.0 to 2.2 mm}
${more.settings ?? ''}services:
  - {id: chain-oil, item: Chain, do: lubricate, every: 500 km}
${more.services ?? ''}`;
}
