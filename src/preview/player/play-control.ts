/** The state of a player: where it stands, whether it runs, and what it does at each reading of its clock. Knows no browser. */

import { type Film, seenOn } from './film.js';
import { type FrameRange, type Playing, playedAt, within } from './play-clock.js';

export const SPEEDS: readonly number[] = [1, 1 / 2, 1 / 4];

export interface PlayHooks {
  /** The clock, in seconds, of any beginning. */
  now(): number;
  /** The soonest reading at which it can begin to run: with sound a little later than now. */
  soonest(): number;
  /** Another frame is to be seen, or the same one of another film. */
  show(frame: number): void;
  /** Anything else is another way than before: it runs or not, its range, its speed, its caution. */
  changed(): void;
  /** It runs anew from here: what is heard begins again. Null: it has stopped. */
  runs(playing: Playing | null): void;
}

export class PlayControl {
  film: Film | null = null;
  frame = 1;
  speed = 1;
  loop = false;
  /** Null: the whole film. */
  range: FrameRange | null = null;
  playing: Playing | null = null;
  /** The cut whose flashing light stands in the way of playing. */
  caution: string | null = null;
  /** Cuts that were let play although they flash. */
  private readonly allowed = new Set<string>();

  constructor(private readonly hooks: PlayHooks) {}

  get length(): number {
    return this.film?.order.frames ?? 0;
  }

  get played(): FrameRange {
    return this.range ?? { first: 1, last: this.length };
  }

  /** Another film, which does not run; null: none. */
  open(film: Film | null, frame = 1): void {
    this.halt();
    this.film = film;
    this.range = null;
    this.goTo(frame);
  }

  /** The same film of a newer text: goes on from the frame, which may have another number now. */
  exchange(film: Film, frame: number): void {
    const { playing } = this;
    const part = playing ? playedAt(playing, this.hooks.now()).time % 1 : 0;
    this.film = film;
    if (this.range) {
      const all = { first: 1, last: this.length };
      const range = { first: within(this.range.first, all), last: within(this.range.last, all) };
      this.range = range;
    }
    const { first, last } = this.played;
    this.frame = within(frame, { first: 1, last: this.length });
    this.hooks.show(this.frame);
    if (playing) {
      if (this.stopsBefore(this.frame)) return;
      const from = within(this.frame, { first, last }) - 1 + part;
      this.run(from);
    }
    this.hooks.changed();
  }

  /** From the frame where it stands; at the end of what is played from its beginning. */
  play(): void {
    if (!this.film || this.playing) return;
    const { first, last } = this.played;
    const inside = this.frame >= first && this.frame < last;
    const from = inside ? this.frame : first;
    if (this.stopsBefore(from)) return;
    this.run(from - 1);
    if (from !== this.frame) this.show(from);
    this.hooks.changed();
  }

  stop(): void {
    if (!this.playing) return;
    const { frame } = playedAt(this.playing, this.hooks.now());
    this.halt();
    this.goTo(frame);
  }

  /** Whoever has read the caution lets the cut play. */
  allow(): void {
    if (this.caution === null) return;
    this.allowed.add(this.caution);
    this.caution = null;
    this.play();
    this.hooks.changed();
  }

  /** Stops, and shows a frame. */
  seek(frame: number): void {
    this.halt();
    this.goTo(frame);
  }

  /** Goes on from another frame if it runs. */
  jump(frame: number): void {
    const runs = this.playing !== null;
    this.seek(frame);
    if (runs) this.play();
  }

  step(by: number): void {
    if (this.playing) this.stop();
    this.goTo(this.frame + by);
  }

  setSpeed(speed: number): void {
    this.again(() => {
      this.speed = speed;
    });
  }

  setLoop(loop: boolean): void {
    this.again(() => {
      this.loop = loop;
    });
  }

  /** What is played from now on; null: all. A range is looped. */
  setRange(range: FrameRange | null): void {
    this.again(() => {
      const all = { first: 1, last: this.length };
      this.range = range && { first: within(range.first, all), last: within(range.last, all) };
      if (range) this.loop = true;
    });
  }

  /** The clock has gone on. */
  tick(): void {
    if (!this.playing) return;
    const { frame, ended } = playedAt(this.playing, this.hooks.now());
    for (let next = this.frame + 1; next <= frame; next++) {
      if (!this.stopsBefore(next)) continue;
      if (next - 1 !== this.frame) this.show(next - 1);
      return;
    }
    if (frame < this.frame && this.stopsBefore(frame)) return;
    if (frame !== this.frame) this.show(frame);
    if (ended) {
      this.halt();
      this.hooks.changed();
    }
  }

  /** The clock is another one from now on: `change` exchanges it. */
  again(change: () => void): void {
    const time = this.playing && playedAt(this.playing, this.hooks.now()).time;
    change();
    if (time !== null) {
      const { first, last } = this.played;
      this.run(time >= first - 1 && time < last ? time : first - 1);
    }
    this.hooks.changed();
  }

  /** Whether light flashes on a frame that nobody has let play: then it stands before it, with the caution. */
  private stopsBefore(frame: number): boolean {
    const { film } = this;
    const cut = film && seenOn(film, frame).find((id) => film.flashing.has(id) && !this.allowed.has(id));
    if (!cut) return false;
    this.halt();
    this.caution = cut;
    this.hooks.changed();
    return true;
  }

  private run(from: number): void {
    const { film, speed, loop, played } = this;
    const start = this.hooks.soonest();
    this.playing = { start, from, fps: film!.order.fps, speed, range: played, loop };
    this.caution = null;
    this.hooks.runs(this.playing);
  }

  private halt(): void {
    if (this.playing === null) return;
    this.playing = null;
    this.hooks.runs(null);
  }

  private goTo(frame: number): void {
    this.caution = null;
    if (this.film) this.show(within(frame, { first: 1, last: this.length }));
    this.hooks.changed();
  }

  private show(frame: number): void {
    this.frame = frame;
    this.hooks.show(frame);
  }
}
