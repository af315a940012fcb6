/**
 * One by one what comes in batches. What is at hand is given at once: an async generator of single ones would cost more than
 * working them out.
 */
export class Unrolled<T> implements AsyncIterableIterator<T, void, undefined> {
  readonly #batches: AsyncGenerator<Iterator<T>, void, undefined>;
  #batch: Iterator<T> | undefined;
  #waiting = 0;
  #last: Promise<unknown> = Promise.resolve();

  constructor(batches: AsyncGenerator<Iterator<T>, void, undefined>) {
    this.#batches = batches;
  }

  [Symbol.asyncIterator](): this {
    return this;
  }

  next(): Promise<IteratorResult<T, void>> {
    if (this.#waiting > 0 || this.#batch === undefined) return this.#afterOthers(() => this.#advance());
    try {
      const one = this.#batch.next();
      if (one.done !== true) return Promise.resolve(one);
    } catch (error) {
      return this.#afterOthers(() => this.#fail(error));
    }
    return this.#afterOthers(() => this.#advance());
  }

  return(): Promise<IteratorResult<T, void>> {
    return this.#afterOthers(async () => {
      this.#batch = undefined;
      await this.#batches.return();
      return { done: true, value: undefined };
    });
  }

  /** Those that are asked for before another has come wait for it. */
  #afterOthers<R>(work: () => Promise<R>): Promise<R> {
    this.#waiting += 1;
    const result = this.#last.then(work);
    const done = (): void => {
      this.#waiting -= 1;
    };
    this.#last = result.then(done, done);
    return result;
  }

  async #advance(): Promise<IteratorResult<T, void>> {
    for (;;) {
      try {
        const one = this.#batch?.next();
        if (one !== undefined && one.done !== true) return one;
      } catch (error) {
        return this.#fail(error);
      }
      const batch = await this.#batches.next();
      if (batch.done === true) return { done: true, value: undefined };
      this.#batch = batch.value;
    }
  }

  async #fail(error: unknown): Promise<never> {
    this.#batch = undefined;
    await this.#batches.return();
    throw error;
  }
}
