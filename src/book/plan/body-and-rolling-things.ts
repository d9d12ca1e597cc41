// Which things a machine is pushed on, and which it can do without while its engine runs: by their names, as common practice has it.
import { plainName } from '../names.ts';

/** It stands, rolls, steers and stops on these. */
const rolling =
  /\b(?:wheel|spindle|axle|fork|yoke|steering|head bearing|handlebar|bar|brake|tyre|tire|tube|rim|spoke|swing(?:ing)? ?arm|shock|damper|torque arm|stand|caliper|calliper)\b/u;
/** Off, these keep no engine from running. */
const body =
  /\b(?:mudguard|fender|seat|side panel|badge|mirror|number plate|license plate|carrier|toolbox|chain ?guard|chain ?case|lamp|headlamp|indicator|horn|speedometer|trim|paint|final chain)\b/u;

/** Is it needed to push the machine? An unknown name is not, and is said to be set aside. */
export function isRolling(thing: string): boolean {
  return rolling.test(plainName(thing));
}

/** May it stay off while the engine runs on the stand? An unknown name may not. */
export function mayStayOff(thing: string): boolean {
  const name = plainName(thing);
  return rolling.test(name) || body.test(name);
}
