import { cutKey } from '../episode/episode.js';

/** Cuts by their numbers, in order; a second cut of one number counts as another. */
export class ByNumber<T> {
  private readonly byKey = new Map<string, T>();

  /** Takes in the next cut of a number; its key. */
  next(cut: string, value: T): string {
    const plain = cutKey(cut);
    let key = plain;
    for (let i = 2; this.byKey.has(key); i++) key = `${plain} ${i}`;
    this.byKey.set(key, value);
    return key;
  }

  set(key: string, value: T): void {
    this.byKey.set(key, value);
  }

  get(key: string): T | undefined {
    return this.byKey.get(key);
  }

  has(key: string): boolean {
    return this.byKey.has(key);
  }

  keys(): string[] {
    return [...this.byKey.keys()];
  }
}
