// What is used of papaparse, which comes without types; those made for it apart want the types of a browser.
declare module "papaparse" {
  interface Parsed {
    readonly data: readonly (readonly string[])[];
    readonly errors: readonly { readonly type: string; readonly code: string }[];
    /** Where the last whole row ends. */
    readonly meta: { readonly cursor: number };
  }
  interface Parser {
    /** `leaveLast` keeps back a row that may go on after the text. */
    readonly parse: (text: string, from: number, leaveLast: boolean) => Parsed;
  }
  const Papa: { readonly Parser: new (config: { readonly delimiter: string; readonly newline: string; readonly preview?: number }) => Parser };
  export default Papa;
}
