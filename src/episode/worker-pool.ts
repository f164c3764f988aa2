/**
 * The cuts of a run, compiled by several threads. This thread compiles too, and takes what came of the cuts in their order. A thread
 * gets a few cuts in a row at a time, since they know their neighbours; whoever is done first gets the next ones, and at the end this
 * thread takes over what a worker has not begun.
 */

import type { Host, Reading, WorkerThread } from '../host/host.js';
import { type CutCompiler, type CutOutcome, type CutResult, faultWords } from './cut-outcome.js';
import type { Found, Job } from './find-cuts.js';

/** How many threads work on a run, this one with them, and what the others are told to do; plain data. */
export interface WorkerTask {
  readonly threads: number;
  /** Whose code they load. */
  readonly command: string;
  readonly task: unknown;
}

/** What a worker is told once. A task may name the jobs: they are the same objects there. */
export interface WorkerStart extends Pick<Found, 'jobs' | 'whole'> {
  readonly task: unknown;
  readonly claims: Claims;
}

/** In memory that all threads share, by place: 1 where somebody has begun with the cut. */
export type Claims = Int32Array;

/** Whether the caller is to do the cut at a place: nobody else has begun with it. */
export const claim = (claims: Claims, place: number): boolean =>
  Atomics.compareExchange(claims, place, 0, 1) === 0;

/** Then: which of the jobs it has to do, in this order, but for those that somebody else has begun with. */
export interface WorkerOrder {
  readonly places: readonly number[];
}

/** What it says first: its code is loaded. */
export const LOADED = 'loaded';

/** What came of a cut, with what was made of it; or what the program stumbled over. */
type Done<T> = Reading<{ readonly outcome: CutOutcome; readonly made: Reading<T> }>;

/** What it then answers for each cut. */
export interface WorkerAnswer<T> {
  readonly place: number;
  readonly done: Done<T>;
}

/** Cuts that a thread gets at a time; fewer at the end, so that all are done at the same time. */
const MOST_AT_A_TIME = 8;
/** A worker with fewer to do gets more, so that it never waits for this thread. */
const FEW = 4;
/** So many cuts a thread are compiled ahead of the one that is taken next: what came of them is held in memory. */
const AHEAD = 24;

/** More of them would wait for the one that writes the files. */
const MOST_THREADS = 8;

/**
 * How many threads are to work on so many cuts. `asked`: as somebody has asked for, or null. `cutsAThread`: with fewer for each, the
 * start of a thread takes longer than it saves.
 */
export function threadsFor(host: Host, cuts: number, asked: number | null, cutsAThread: number): number {
  if (asked !== null) return Math.min(asked, cuts);
  return Math.max(1, Math.min(host.processors(), MOST_THREADS, Math.floor(cuts / cutsAThread)));
}

interface Worker {
  readonly thread: WorkerThread;
  loaded: boolean;
  readonly places: Set<number>;
}

export class WorkerPool<T> {
  private readonly workers = new Set<Worker>();
  private readonly ready = new Map<number, Done<T>>();
  /** Places of the cuts that this thread has to do. */
  private readonly own: number[] = [];
  private readonly claims: Claims;
  /** In `places`: the first cut that nobody has to do yet; the one that is taken next. */
  private next = 0;
  private taken = 0;
  private changed: () => void = () => {};
  private allLoaded: () => void = () => {};
  /** Resolves when the code of all workers is loaded, as far as they live. */
  readonly loaded = new Promise<void>((resolve) => {
    this.allLoaded = resolve;
  });

  private constructor(
    private readonly jobs: readonly Job[],
    private readonly places: readonly number[],
    private readonly threads: number,
    private readonly here: CutCompiler<T>,
  ) {
    this.claims = new Int32Array(new SharedArrayBuffer(4 * jobs.length));
  }

  /** For the jobs at these places. Null where there is nobody to help. */
  static start<T>(
    host: Host,
    { jobs, whole }: Found,
    places: readonly number[],
    { threads, command, task }: WorkerTask,
    here: CutCompiler<T>,
  ): WorkerPool<T> | null {
    if (jobs.some(({ path }) => path === null)) return null;
    const pool = new WorkerPool(jobs, places, threads, here);
    pool.own.push(...pool.some());
    while (pool.workers.size < threads - 1) {
      const thread = host.startWorker(command);
      if (!thread) break;
      pool.take(thread, { jobs, whole, task, claims: pool.claims });
    }
    return pool.workers.size > 0 ? pool : null;
  }

  /** Of the job at the next of the places. Rejects where the program stumbled while it compiled. */
  async result(): Promise<CutResult<T>> {
    const place = this.places[this.taken]!;
    for (;;) {
      this.feed();
      const ready = this.ready.get(place);
      if (ready) {
        this.ready.delete(place);
        this.taken += 1;
        const { outcome, made } = valueIn(ready);
        return { outcome, made: () => valueIn(made) };
      }
      if (this.own.length === 0) this.own.push(...this.some());
      const own = this.own.shift() ?? this.takenOver();
      if (own === undefined) await this.change();
      else {
        this.ready.set(own, await doneWith(this.here, this.jobs[own]!));
        // Lets answers of the others in.
        await new Promise<void>((resolve) => setImmediate(resolve));
      }
    }
  }

  stop(): void {
    for (const { thread } of this.workers) thread.stop();
    this.workers.clear();
  }

  private take(thread: WorkerThread, start: WorkerStart): void {
    const worker: Worker = { thread, loaded: false, places: new Set() };
    this.workers.add(worker);
    thread.listen(
      (message) => {
        if (message === LOADED) {
          worker.loaded = true;
          this.checkLoaded();
          return;
        }
        const { place, done } = message as WorkerAnswer<T>;
        worker.places.delete(place);
        this.ready.set(place, done);
        this.changed();
      },
      () => {
        // Out of memory, or a fault of the program: what it had to do is done here.
        this.workers.delete(worker);
        this.own.unshift(...worker.places);
        this.checkLoaded();
        this.changed();
      },
    );
    thread.post(start);
  }

  private checkLoaded(): void {
    if ([...this.workers].every(({ loaded }) => loaded)) this.allLoaded();
  }

  private feed(): void {
    for (const { thread, places } of this.workers) {
      if (places.size >= FEW) continue;
      const more = this.some();
      if (more.length === 0) return;
      for (const place of more) places.add(place);
      thread.post({ places: more } satisfies WorkerOrder);
    }
  }

  /** Places of the next cuts that somebody is to do. */
  private some(): number[] {
    const left = this.places.length - this.next;
    const room = this.taken + AHEAD * this.threads - this.next;
    const count = Math.min(MOST_AT_A_TIME, Math.ceil(left / (3 * this.threads)), room);
    const places = this.places.slice(this.next, this.next + Math.max(0, count));
    this.next += places.length;
    return places;
  }

  /** A cut that a worker has to do and has not begun. */
  private takenOver(): number | undefined {
    for (const { places } of this.workers) {
      const place = [...places].reverse().find((one) => claim(this.claims, one));
      if (place === undefined) continue;
      places.delete(place);
      return place;
    }
    return undefined;
  }

  private change(): Promise<void> {
    return new Promise((resolve) => {
      this.changed = resolve;
    });
  }
}

/** What a worker and the thread that it works for do alike. Never rejects. */
export function doneWith<T>(compiler: CutCompiler<T>, job: Job): Promise<Done<T>> {
  return reading(async () => {
    const { outcome, made } = await compiler.result(job);
    return { outcome, made: await reading(made) };
  });
}

async function reading<T>(work: () => Promise<T> | T): Promise<Reading<T>> {
  try {
    return { ok: true, value: await work() };
  } catch (fault) {
    return { ok: false, reason: faultWords(fault) };
  }
}

function valueIn<T>(done: Reading<T>): T {
  if (!done.ok) throw new Error(done.reason);
  return done.value;
}
