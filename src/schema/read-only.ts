import * as z from "zod/mini";

/**
 * A schema whose value is frozen once it has been read. zod's own `readonly` freezes what is not of its kind too, and
 * that is the caller's.
 */
export function readOnly<S extends z.ZodMiniType>(schema: S): z.ZodMiniPipe<S, z.ZodMiniTransform<Readonly<z.output<S>>, z.output<S>>> {
  return z.pipe(schema, z.transform((value: z.output<S>) => Object.freeze(value)));
}
