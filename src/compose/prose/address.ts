// Which addresses a record may name: web and mail addresses are shown, never followed; everything else is only words.

/** Where a link leads: to an address that is printed, to a place in this binder, or nowhere. */
export type Lead =
  | { readonly kind: 'shown'; readonly address: string }
  | { readonly kind: 'job'; readonly to: string }
  | { readonly kind: 'refused' };

const record = /^(?:\.\/|\.\.\/jobs\/|jobs\/)?([^/:?#\\]+)\.md$/;

/** What a link's address is good for. `javascript:`, `data:`, `file:` and addresses without a scheme and host are refused. */
export function leadOf(address: string): Lead {
  if (/^(https?:\/\/|mailto:)[^\s]+$/i.test(address)) return { kind: 'shown', address };
  const job = record.exec(decoded(address))?.[1];
  return job === undefined ? { kind: 'refused' } : { kind: 'job', to: `job:${job}` };
}

/** A path below the machine folder, without climbing; undefined for anything else. */
export function localPhoto(address: string): string | undefined {
  const path = decoded(address);
  if (/^[a-z][a-z0-9+.-]*:/i.test(path) || path.startsWith('/') || path.includes('\\')) return undefined;
  const steps = path.split('/').filter((step) => step !== '.');
  const fromJobs = steps[0] === '..' ? steps.slice(1) : steps;
  if (fromJobs.length === 0 || fromJobs.some((step) => step === '..' || step === '')) return undefined;
  return fromJobs.join('/');
}

function decoded(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}
