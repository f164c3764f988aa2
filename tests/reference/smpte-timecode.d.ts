/** The part of the npm package `smpte-timecode` that the tests use; it brings no types. */
declare module 'smpte-timecode' {
  export default function Timecode(
    frames: number,
    frameRate: number,
    dropFrame: boolean,
  ): { toString(): string };
}
