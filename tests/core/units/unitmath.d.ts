// The package's own declaration file is not a module. Its main file needs a loader that Node 24 breaks.
declare module 'unitmath/dist/UnitMath.js' {
  interface Quantity {
    readonly value: number;
    to(unit: string): Quantity;
  }
  export default function unit(written: string): Quantity;
}
