/** What is heard while it plays, and the clock that goes with it. */

import type { FilmPart } from '../../picture/film-order.js';
import type { Film } from '../player/film.js';
import type { Playing } from '../player/play-clock.js';
import { heardBetween } from '../player/sound-schedule.js';
import type { PlayedCuts } from './played-cuts.js';

/** So far ahead, in seconds, is decided what is heard. */
const AHEAD = 0.5;
/** An audio clock that stands still for so long, in seconds, is no clock. */
const STILL = 0.6;
const MOST_KEPT = 6;

export class PlayerSound {
  private context: AudioContext | null = null;
  /** Decoded recordings by what they are; null: on the way, or not to be had. */
  private readonly heard = new Map<string, AudioBuffer | null>();
  private readonly nodes = new Set<AudioBufferSourceNode>();
  /** Keys of the pieces that were handed over. */
  private readonly begun = new Set<string>();
  private playing: Playing | null = null;
  private parts: readonly FilmPart[] = [];
  private ids: readonly string[] = [];
  private last = 0;
  private moved = 0;

  constructor(private readonly cuts: PlayedCuts) {}

  /** The audio clock is the player's: what is heard and what is seen cannot drift apart. */
  private audio = false;

  /** Seconds. */
  now(): number {
    return this.audio && this.context ? this.audioNow(this.context) : performance.now() / 1000;
  }

  /** The soonest reading at which something can begin to be heard. */
  soonest(): number {
    return this.audio && this.context ? this.context.currentTime + 0.01 : this.now();
  }

  /** Called where a person has pressed something, as browsers want it. Whether the clock is to be the other one from now on: then `use` is to be called. */
  async wake(wanted: boolean): Promise<boolean> {
    if (!wanted) return this.audio;
    this.context ??= new AudioContext({ latencyHint: 'interactive' });
    const { context } = this;
    if (context.state !== 'running') {
      const late = new Promise((done) => setTimeout(done, 400));
      await Promise.race([context.resume().catch(() => {}), late]);
    }
    return (context.state === 'running') !== this.audio;
  }

  use(audio: boolean): void {
    this.audio = audio && this.context !== null;
    this.last = 0;
    this.moved = performance.now() / 1000;
  }

  get usesAudio(): boolean {
    return this.audio;
  }

  /** The audio clock has stopped: a device was taken away. */
  get stuck(): boolean {
    return this.audio && performance.now() / 1000 - this.moved > STILL;
  }

  /** Fetches what a cut hears. */
  async prepare(id: string): Promise<void> {
    const loaded = this.cuts.at(id);
    const key = loaded?.play.sound;
    if (!key || this.heard.has(key)) return;
    this.heard.set(key, null);
    const answer = await fetch(`sound/${id}`).catch(() => null);
    const bytes = answer?.ok ? await answer.arrayBuffer() : null;
    this.context ??= new AudioContext({ latencyHint: 'interactive' });
    const decoded = bytes && (await this.context.decodeAudioData(bytes).catch(() => null));
    if (!decoded) return;
    this.heard.set(key, decoded);
    const [oldest] = this.heard.keys();
    if (this.heard.size > MOST_KEPT) this.heard.delete(oldest!);
  }

  start(film: Film, playing: Playing | null): void {
    for (const node of this.nodes) node.stop();
    this.nodes.clear();
    this.begun.clear();
    this.playing = playing;
    this.parts = film.order.parts;
    this.ids = film.ids;
    this.moved = performance.now() / 1000;
    this.tick();
  }

  /** Has what begins soon begin at its time. */
  tick(): void {
    const { playing, context } = this;
    if (!playing || !context || !this.audio) return;
    const now = this.now();
    for (const piece of heardBetween(playing, this.parts, now, now + AHEAD)) {
      if (this.begun.has(piece.key)) continue;
      const sound = this.cuts.at(this.ids[piece.part]!)?.play.sound;
      const buffer = sound ? this.heard.get(sound) : null;
      if (!buffer) continue;
      const node = context.createBufferSource();
      node.buffer = buffer;
      node.playbackRate.value = playing.speed;
      node.connect(context.destination);
      // A recording that comes late goes on in its middle.
      const begin = Math.max(piece.from, context.currentTime);
      const skipped = (begin - piece.from) * playing.speed;
      node.start(begin, piece.offset + skipped, Math.max(0, piece.to - begin) * playing.speed);
      node.onended = () => this.nodes.delete(node);
      this.nodes.add(node);
      this.begun.add(piece.key);
    }
  }

  /** What is heard now lies the output's delay behind what is handed over now. */
  private audioNow(context: AudioContext): number {
    const delay = context.outputLatency || context.baseLatency || 0;
    const reading = context.currentTime - delay;
    if (reading > this.last) {
      this.last = reading;
      this.moved = performance.now() / 1000;
    }
    return this.last;
  }
}
