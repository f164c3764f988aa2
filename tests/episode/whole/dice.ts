/** The same numbers on every run and every machine. */
export class Dice {
  #state: number;

  constructor(seed: number) {
    // Seeds that lie side by side shall not begin alike.
    this.#state = Math.imul(seed + 1, 2654435761) >>> 0;
    this.below(2);
  }

  /** 0 … sides − 1 (a linear congruential generator with the constants of Numerical Recipes; from memory). */
  below(sides: number): number {
    this.#state = (Math.imul(this.#state, 1664525) + 1013904223) >>> 0;
    return Math.floor((this.#state / 2 ** 32) * sides);
  }

  /** min … max, both included. */
  from(min: number, max: number): number {
    return min + this.below(max - min + 1);
  }

  /** True once in so many times. */
  once(inSoMany: number): boolean {
    return this.below(inSoMany) === 0;
  }

  one<T>(of: readonly T[]): T {
    return of[this.below(of.length)]!;
  }

  shuffled<T>(of: readonly T[]): T[] {
    const left = [...of];
    return of.map(() => left.splice(this.below(left.length), 1)[0]!);
  }
}
