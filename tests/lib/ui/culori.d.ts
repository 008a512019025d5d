// The package brings no types; these are the parts that the colour tests use.
declare module 'culori' {
  export interface Colour {
    readonly mode: string;
  }
  type Filter = (colour: string | Colour) => Colour;
  export function wcagContrast(a: string | Colour, b: string | Colour): number;
  export function differenceCiede2000(): (a: string | Colour, b: string | Colour) => number;
  export function filterDeficiencyProt(severity: number): Filter;
  export function filterDeficiencyDeuter(severity: number): Filter;
  export function filterDeficiencyTrit(severity: number): Filter;
  export function filterGrayscale(amount: number): Filter;
  export function interpolate(colours: readonly string[], mode: 'rgb'): (share: number) => Colour;
}
