declare module "virtual:packages" {
  /** Every entry of the package, under the name that a user imports it by. */
  export const packages: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
}
