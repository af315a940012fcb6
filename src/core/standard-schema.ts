/** The Standard Schema interface, version 1, as its specification prints it for copying: form libraries take it. */
export interface StandardSchema<Input = unknown, Output = Input> {
  /** Where the interface is found. */
  readonly "~standard": {
    /** Of the interface. */
    readonly version: 1;
    /** Who made the schema. */
    readonly vendor: string;
    /** Reads a value, or says what is wrong with it. */
    readonly validate: (value: unknown) => StandardResult<Output> | Promise<StandardResult<Output>>;
    /** Known to the compiler only. */
    readonly types?: { readonly input: Input; readonly output: Output } | undefined;
  };
}

/** What a Standard Schema gives: the value, or what is wrong with it. */
export type StandardResult<Output> =
  | { readonly value: Output; readonly issues?: undefined }
  | { readonly issues: readonly StandardIssue[] };

/** One thing that is wrong, as Standard Schema tells it. */
export interface StandardIssue {
  readonly message: string;
  readonly path?: readonly (PropertyKey | { readonly key: PropertyKey })[] | undefined;
}
