// The part of the package that makes codes, without the writers of pictures that loading the whole would bring.
declare module 'qrcode/lib/core/qrcode.js' {
  export { create } from 'qrcode';
}
