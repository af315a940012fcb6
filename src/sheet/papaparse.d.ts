// What is used of papaparse, which comes without types; those made for it apart want the types of a browser.
declare module "papaparse" {
  interface Parsed {
    readonly data: readonly (readonly string[])[];
    readonly errors: readonly { readonly type: string; readonly row?: number }[];
  }
  const Papa: { readonly parse: (text: string, config: { readonly delimiter: string; readonly preview?: number }) => Parsed };
  export default Papa;
}
