/**
 * The player of the live view. It shows the chosen cut, or the episode from cut point to cut point, and lights the row of the sheet.
 * The page (live.js) tells it what is chosen and what has changed; frame lists are fetched when the player is open.
 */

import { rowName } from '../../shot/time-notation.js';
import type { EpisodePlay } from '../play-data.js';
import { type Film, filmOfCut, filmOfEpisode, frameOfRow, rowOf, seenOn } from '../player/film.js';
import { PlayControl, SPEEDS } from '../player/play-control.js';
import { FilmCanvas } from './film-canvas.js';
import { PlayedCuts } from './played-cuts.js';
import { PlayerSound } from './player-sound.js';
import { SheetRows } from './sheet-rows.js';

/** A line of the page's list of cuts. */
interface ListedCut {
  readonly id: string;
  readonly number: string;
  readonly title: string;
  readonly file: string;
  readonly version: number;
}

export interface PageHooks {
  /** Shows another cut's pages. */
  choose(id: string): void;
  /** A row of the pages was pressed, in the column of a level or (null) in none. */
  pressed(frame: number, level: string | null): void;
}

const FRAMES_A_FOOT = 16;
/** Cuts that begin so soon are fetched, frames. */
const SOON = 96;

const $ = <T extends HTMLElement = HTMLElement>(id: string) => document.getElementById(id) as T;

/** A text in the language of the page. */
const said = (english: string, japanese: string): string =>
  document.documentElement.lang === 'ja' ? japanese : english;

export class Player {
  private readonly cuts = new PlayedCuts();
  private readonly sound = new PlayerSound(this.cuts);
  private readonly canvas = new FilmCanvas($<HTMLCanvasElement>('picture'), this.cuts);
  private readonly rows: SheetRows;
  private readonly control: PlayControl;
  private list: readonly ListedCut[] = [];
  /** The cut whose pages are shown. */
  private shown: string | null = null;
  /** Its pages are there, and rows can be lit. */
  private whole = false;
  /** Where each cut stood. */
  private readonly places = new Map<string, number>();
  /** The question that counts: an answer to an earlier one comes too late. */
  private asked = 0;
  private ticking = false;
  /** What is said of the film as it is, and what has become of the one before. */
  private word = '';
  private news = '';

  constructor(private readonly page: PageHooks) {
    this.rows = new SheetRows($('desk'), $('pages'), {
      went: (frame, level) => {
        this.page.pressed(frame, level);
        if (this.open) this.goToRow(frame);
      },
      took: ({ first, last }) => {
        if (!this.open || !this.shown) return;
        const [from, to] = [first, last].map((row) => this.frameOf(row));
        if (from && to) this.control.setRange({ first: from, last: to });
        if (from && !this.control.playing) this.control.seek(from);
      },
    });
    this.control = new PlayControl({
      now: () => this.sound.now(),
      soonest: () => this.sound.soonest(),
      show: () => this.show(),
      changed: () => this.draw(),
      runs: (playing) => {
        if (this.control.film) this.sound.start(this.control.film, playing);
        if (playing) this.run();
        else if (this.whole) this.follow();
      },
    });
    this.listen();
    this.setOpen(sessionStorage.getItem('player') !== null);
    document.addEventListener('visibilitychange', () => document.hidden && this.control.stop());
    // Scans come and go without a text being saved.
    addEventListener('focus', () => this.open && !this.control.playing && this.renewSeen());
  }

  /** The row of the pages at which the player stands; null: at none of the cut that is shown. */
  get row(): number | null {
    const { film, frame } = this.control;
    const at = film && this.open ? rowOf(film, frame) : null;
    return at && at.id === this.shown ? at.row : null;
  }

  get open(): boolean {
    return !$('player').hidden;
  }

  // ---- what the page tells

  /** The cuts in story order. */
  setList(list: readonly ListedCut[]): void {
    const before = new Map(this.list.map(({ id, version }) => [id, version]));
    const { film } = this.control;
    const name = film && this.nameOf(this.own());
    // A copy: the page goes on to change its own.
    this.list = [...list];
    const ids = new Set(list.map(({ id }) => id));
    const gone = film && !this.whole ? film.ids.filter((id) => !ids.has(id)) : [];
    const lost = film && (this.whole ? !ids.has(this.own()) : gone.length > 0);
    if (lost) {
      const played = this.control.playing !== null;
      this.control.open(null);
      this.canvas.clear();
      this.news = said(
        `${name} is gone${played ? ': playing has stopped' : ''}.`,
        `${name} がなくなりました${played ? '。再生を止めました' : ''}。`,
      );
      this.draw();
    }
    for (const { id, version } of list) if (before.has(id) && before.get(id) !== version) this.saved(id);
    if (this.whole && this.open && (lost || list.length !== before.size)) void this.load(!lost);
  }

  /** The page shows the pages of a cut. */
  setShown(id: string): void {
    const other = this.shown !== id;
    this.shown = id;
    this.rows.renew();
    if (!this.open) return;
    if (!other) this.light();
    else if (!this.whole) void this.load(false);
    else if (this.control.film && this.own() !== id) {
      const frame = frameOfRow(this.control.film, { id, row: 1 });
      if (frame !== null) this.control.seek(frame);
      this.light();
    } else this.light();
  }

  /** The pages were exchanged. */
  setPages(): void {
    this.rows.renew();
  }

  /** Escape lets go of what is marked. */
  letGo(): void {
    this.control.setRange(null);
  }

  /** Whether it has use for a key. */
  key(event: KeyboardEvent): boolean {
    const target = event.target as Element;
    const inside = $('player').contains(target);
    if (event.key === ' ') {
      // A button is pressed with it, but for the one of the cut that is shown already.
      const own = target.closest('button, summary, select, input');
      if (own && own.getAttribute('aria-current') !== 'true' && !own.matches('#along')) return false;
      void this.toggle();
      return true;
    }
    if (!this.open) return false;
    const { control } = this;
    const acts: Readonly<Record<string, () => void>> = {
      ',': () => control.step(-1),
      '.': () => control.step(1),
      l: () => control.setLoop(!control.loop),
      s: () => this.nextSpeed(),
      e: () => void this.setWhole(!this.whole),
      '[': () => this.rangeFrom(),
      ']': () => this.rangeTo(),
      v: () => this.setOpen(false),
      ...(inside && !target.matches('select')
        ? {
            ArrowLeft: () => control.step(-1),
            ArrowRight: () => control.step(1),
            Home: () => control.jump(control.played.first),
            End: () => control.jump(control.played.last),
          }
        : {}),
    };
    const act = acts[event.key];
    act?.();
    return act !== undefined;
  }

  // ---- what a person does

  private listen(): void {
    const act = (id: string, press: () => void) => {
      $(id).addEventListener('click', press);
      // A button that is clicked does not take the keys away.
      $(id).addEventListener('mousedown', (event) => event.preventDefault());
    };
    const { control } = this;
    act('view', () => this.setOpen(!this.open));
    act('play', () => void this.toggle());
    act('back', () => control.step(-1));
    act('forth', () => control.step(1));
    act('loop', () => control.setLoop(!control.loop));
    act('from-here', () => this.rangeFrom());
    act('to-here', () => this.rangeTo());
    act('all', () => control.setRange(null));
    act('episode', () => void this.setWhole(!this.whole));
    act('allow', () => {
      control.allow();
      $('picture').focus();
    });
    $('speed').addEventListener('change', () =>
      control.setSpeed(SPEEDS[$<HTMLSelectElement>('speed').selectedIndex] ?? 1),
    );
    $('along').addEventListener('input', () => control.jump(Number($<HTMLInputElement>('along').value)));
    $('picture').addEventListener('click', () => void this.toggle());
  }

  private async toggle(): Promise<void> {
    this.news = '';
    if (!this.open) this.setOpen(true);
    if (this.control.playing) return this.control.stop();
    if (!this.control.film) await this.load(true);
    const { film } = this.control;
    const another = await this.sound.wake(film?.heard ?? false);
    if (this.control.playing) return;
    if (another) this.sound.use(!this.sound.usesAudio);
    this.control.play();
  }

  private setOpen(open: boolean): void {
    $('player').hidden = !open;
    $('view').setAttribute('aria-expanded', String(open));
    if (open) sessionStorage.setItem('player', 'open');
    else sessionStorage.removeItem('player');
    if (!open) {
      const inside = $('player').contains(document.activeElement);
      this.control.stop();
      this.rows.light(null, false);
      this.rows.mark(null);
      if (inside) $('desk').focus();
      return;
    }
    $('picture').focus({ preventScroll: true });
    if (this.shown !== null) void this.load(true);
  }

  private async setWhole(whole: boolean): Promise<void> {
    const { film } = this.control;
    const place = film && rowOf(film, this.control.frame);
    this.whole = whole;
    this.control.open(null);
    this.draw();
    if (place) this.places.set(place.id, place.row);
    if (!whole && place && place.id !== this.shown) return this.page.choose(place.id);
    await this.load(false);
  }

  private nextSpeed(): void {
    const at = SPEEDS.indexOf(this.control.speed);
    this.control.setSpeed(SPEEDS[(at + 1) % SPEEDS.length]!);
  }

  private rangeFrom(): void {
    const { control } = this;
    control.setRange({ first: control.frame, last: Math.max(control.frame, control.played.last) });
  }

  private rangeTo(): void {
    const { control } = this;
    control.setRange({ first: Math.min(control.frame, control.played.first), last: control.frame });
  }

  private goToRow(row: number): void {
    const frame = this.frameOf(row);
    if (frame !== null) this.control.jump(frame);
  }

  /** The frame of the film that shows a row of the pages. */
  private frameOf(row: number): number | null {
    const { film } = this.control;
    return film && this.shown !== null ? frameOfRow(film, { id: this.shown, row }) : null;
  }

  // ---- films

  /** Fetches the film that is to be shown; `stay`: where it stands, if it is of the same cut. */
  private async load(stay: boolean): Promise<void> {
    const mine = ++this.asked;
    const { shown } = this;
    if (shown === null) return;
    const before = this.control.film;
    if (before && !stay) this.remember(before);
    const film = await this.fetchFilm(shown);
    if (mine !== this.asked) return;
    // It may have run on meanwhile.
    const old = this.control.film;
    const place = old && stay ? rowOf(old, this.control.frame) : null;
    if (!film) {
      this.control.open(null);
      this.canvas.clear();
      return;
    }
    if (place && film.ids.includes(place.id)) this.control.exchange(film, frameOfRow(film, place) ?? 1);
    else this.control.open(film, frameOfRow(film, { id: shown, row: this.places.get(shown) ?? 1 }) ?? 1);
  }

  private async fetchFilm(shown: string): Promise<Film | null> {
    this.word = '';
    if (!this.whole) {
      const loaded = await this.cuts.load(shown);
      if (loaded) this.prepare(shown);
      else
        this.word = said(
          'There is nothing to play yet: the text has errors.',
          'テキストに誤りがあるので、まだ再生できません。',
        );
      return loaded && filmOfCut(loaded.play);
    }
    const answer = await fetch(`episode/${shown}`).catch(() => null);
    if (!answer?.ok) return null;
    const episode = (await answer.json()) as EpisodePlay;
    this.word = episode.word;
    if (episode.frames === 0) return null;
    const film = filmOfEpisode(episode);
    const frame = frameOfRow(film, { id: shown, row: this.places.get(shown) ?? 1 }) ?? 1;
    await Promise.all(seenOn(film, frame).map((id) => this.cuts.load(id)));
    return film;
  }

  private remember(film: Film): void {
    const { id, row } = rowOf(film, this.control.frame);
    this.places.set(id, row);
  }

  /** A text was saved: the film goes on with what it says now. */
  private saved(id: string): void {
    const { film } = this.control;
    const own = film ? film.ids.includes(id) : id === this.shown;
    if (!this.open || (!own && !this.whole)) {
      this.cuts.forget(id);
      return;
    }
    const wanted = this.cuts.at(id) !== null || id === this.shown;
    void (wanted ? this.cuts.renew(id) : Promise.resolve(null)).then(() => this.load(true));
  }

  private renewSeen(): void {
    const { film } = this.control;
    if (!film) return;
    for (const id of seenOn(film, this.control.frame))
      void this.cuts.renew(id).then((loaded) => {
        if (loaded && this.control.film === film) this.prepare(id);
        this.show();
      });
  }

  private prepare(id: string): void {
    const loaded = this.cuts.at(id);
    if (loaded) this.canvas.prepare(loaded);
    void this.sound.prepare(id);
  }

  /** Fetches what comes soon. */
  private lookAhead(): void {
    const { film, frame, length, played, loop } = this.control;
    if (!film) return;
    const next = frame + SOON <= played.last ? frame + SOON : loop ? played.first : length;
    for (const id of new Set([...seenOn(film, frame), ...seenOn(film, next)]))
      if (this.cuts.at(id)) void this.sound.prepare(id);
      else
        void this.cuts.load(id).then((loaded) => {
          if (!loaded) return;
          this.prepare(id);
          this.show();
        });
  }

  // ---- what is seen

  private run(): void {
    if (this.ticking) return;
    this.ticking = true;
    const tick = () => {
      if (!this.control.playing) {
        this.ticking = false;
        return;
      }
      if (this.sound.stuck) this.control.again(() => this.sound.use(false));
      this.control.tick();
      this.sound.tick();
      requestAnimationFrame(tick);
    };
    requestAnimationFrame(tick);
  }

  private show(): void {
    const { film, frame } = this.control;
    if (!film) return;
    this.canvas.show(film, frame);
    if (this.whole || this.control.playing) this.lookAhead();
    const { id, row } = rowOf(film, frame);
    const feet = this.cuts.at(id)?.play.feet ?? false;
    const { fps } = film.order;
    const name = (one: number) => rowName(one, feet ? FRAMES_A_FOOT : fps, feet);
    $('picture').dataset.frame = String(frame);
    $('time').textContent = this.whole
      ? said(`${name(frame)}, row ${name(row)}`, `${name(frame)}、${name(row)} の行`)
      : `${name(row)} (${row})`;
    if (!this.control.playing)
      $('picture').setAttribute(
        'aria-label',
        said(`${this.nameOf(id)}, row ${name(row)}`, `${this.nameOf(id)}、${name(row)} の行`),
      );
    $<HTMLInputElement>('along').value = String(frame);
    $('film').textContent = this.nameOf(id);
    this.light();
  }

  private light(): void {
    this.rows.light(this.row, true);
  }

  /** The pages of the cut at which an episode stands. While it runs they stay: to lay out pages costs frames. */
  private follow(): void {
    const id = this.control.film && this.own();
    if (id && id !== this.shown) this.page.choose(id);
  }

  private draw(): void {
    const { control } = this;
    const { film, playing, loop, speed, range, length } = control;
    $('play').textContent = playing ? said('stop', '停止') : said('play', '再生');
    $('play').title = said(`${playing ? 'Stop' : 'Play'} (space)`, `${playing ? '停止' : '再生'} (スペース)`);
    $('loop').setAttribute('aria-pressed', String(loop));
    $('episode').setAttribute('aria-pressed', String(this.whole));
    $<HTMLSelectElement>('speed').selectedIndex = SPEEDS.indexOf(speed);
    $<HTMLInputElement>('along').max = String(Math.max(1, length));
    $<HTMLInputElement>('along').value = String(control.frame);
    for (const id of ['play', 'back', 'forth', 'from-here', 'to-here', 'along'])
      $<HTMLButtonElement>(id).disabled = film === null;
    $<HTMLButtonElement>('all').disabled = range === null;
    if (film === null) {
      $('time').textContent = '';
      $('film').textContent = this.shown === null ? '' : this.nameOf(this.shown);
      this.rows.light(null, false);
    }
    const words = [this.news, this.word].filter(Boolean).join(' ');
    $('player-word').textContent = words;
    $('player-word').hidden = words === '';
    this.drawCaution();
    this.markRange();
  }

  /** Beside the picture as soon as a cut is shown in which light flashes; in an episode when its turn has come. */
  private drawCaution(): void {
    const { control } = this;
    const own = control.film && !this.whole ? this.own() : null;
    const id = control.caution ?? (own && control.film!.flashing.has(own) ? own : null);
    const caution = id === null ? null : (this.cuts.at(id)?.play.caution ?? null);
    $('caution').hidden = caution === null;
    $('caution-word').textContent = caution?.text ?? '';
    if (caution) $('caution-word').lang = caution.language;
    $('allow').hidden = control.caution === null;
    if (control.caution === null) return;
    $('allow').textContent = said(
      `play ${this.nameOf(control.caution)}`,
      `${this.nameOf(control.caution)} を再生`,
    );
    $('allow').focus();
  }

  private markRange(): void {
    const { film, range } = this.control;
    const { shown } = this;
    const part = film && shown !== null ? film.order.parts[film.ids.indexOf(shown)] : undefined;
    const by = part ? part.rowsBefore - part.before : 0;
    const seen = part && range && this.open;
    this.rows.mark(seen ? { first: range.first + by, last: range.last + by } : null);
  }

  private own(): string {
    const { film, frame } = this.control;
    return rowOf(film!, frame).id;
  }

  private nameOf(id: string): string {
    const cut = this.list.find((one) => one.id === id);
    return cut
      ? [cut.number ? said(`Cut ${cut.number}`, `カット${cut.number}`) : cut.file, cut.title]
          .filter(Boolean)
          .join(' ')
      : '';
  }
}
