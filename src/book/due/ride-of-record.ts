// One record with services and a ride: which came first. The odometer says it; where it does not, the kind of the record.
import type { Job } from '../../records/model.ts';

/** Records that tell of a ride: what they serviced is what the ride called for. */
const ofRides: ReadonlySet<string> = new Set(['ride', 'road test']);

/**
 * True when the services of a record were done before its ride, which then counts as ridden since: the oil was changed, and it was
 * ridden home. An odometer of the record as the ride came back says the other way, as does a record of a ride without one.
 */
export function isServedBeforeRide({ ride, odometer, kind }: Job): boolean {
  if (ride === undefined) return false;
  const back = ride.in?.quantity;
  if (odometer !== undefined && back !== undefined) return odometer.quantity < back;
  return !ofRides.has(kind);
}
