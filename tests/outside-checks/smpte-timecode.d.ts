/** The part of the npm package `smpte-timecode` that the tests use; it brings no types. */
declare module 'smpte-timecode' {
  export default function Timecode(
    /** A count, or `HH:MM:SS:FF`. */
    time: number | string,
    frameRate: number,
    dropFrame: boolean,
  ): { toString(): string; readonly frameCount: number };
}
