import { LLkLookaheadStrategy } from 'chevrotain';

type Strategy = InstanceType<typeof LLkLookaheadStrategy>;
type Ways = Parameters<Strategy['buildLookaheadForAlternation']>[0];
type Part = Parameters<Strategy['buildLookaheadForOptional']>[0];

/** The parser library's own way of looking ahead, each choice worked out when it is first met: a cut meets few of them. */
export class LateLookahead extends LLkLookaheadStrategy {
  override buildLookaheadForAlternation(ways: Ways) {
    return late(() => super.buildLookaheadForAlternation(ways));
  }

  override buildLookaheadForOptional(part: Part) {
    return late(() => super.buildLookaheadForOptional(part));
  }
}

function late<This, Args extends unknown[], Result>(
  make: () => (this: This, ...args: Args) => Result,
): (this: This, ...args: Args) => Result {
  let made: ((this: This, ...args: Args) => Result) | undefined;
  return function (...args) {
    made ??= make();
    return made.apply(this, args);
  };
}
