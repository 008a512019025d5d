/** The part of subset-font that we use; the package brings no types. */
declare module 'subset-font' {
  interface Options {
    readonly targetFormat: 'woff2';
    /** Axis → the one value to freeze it at, or the range to keep. */
    readonly variationAxes?: Readonly<
      Record<string, number | { readonly min: number; readonly max: number }>
    >;
    readonly keepFeatures: readonly string[];
    readonly noHinting?: boolean;
  }
  export default function subsetFont(
    font: Buffer,
    characters: string,
    options: Options,
  ): Promise<Buffer>;
}
