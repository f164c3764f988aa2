import { expect, it } from 'vitest';
import { startProgram } from '../../src/host/running-program.js';

const node = (script: string) => startProgram(process.execPath, ['-e', script]);

it('is null where there is no such program', async () => {
  expect(await startProgram('no-such-program-anywhere', [])).toBeNull();
});

it('takes all that it is given, and leaves with its status and what it says', async () => {
  const program = await node(
    'let n = 0; process.stdin.on("data", (b) => (n += b.length)); process.stdin.on("end", () => { console.error(n); process.exit(3); });',
  );
  for (let i = 0; i < 5; i++) expect(await program!.write(Buffer.alloc(100_000))).toBe(true);
  expect(await program!.finish()).toEqual({ status: 3, said: '500000\n' });
});

it('says that it does not listen any more, and why it ended', async () => {
  const program = await node('console.error("no room"); process.exit(1);');
  let listens = true;
  for (let i = 0; listens && i < 1000; i++) listens = await program!.write(Buffer.alloc(100_000));
  expect(listens).toBe(false);
  expect(await program!.finish()).toEqual({ status: 1, said: 'no room\n' });
});

it('is ended at once', async () => {
  const program = await node('setInterval(() => {}, 1000);');
  await program!.stop();
  expect((await program!.finish()).status).toBeNull();
});

it('keeps the end of what it says, however much that is', async () => {
  const program = await node('process.stderr.write("x".repeat(100_000) + "end");');
  const { said } = await program!.finish();
  expect(said.length).toBeLessThanOrEqual(8192);
  expect(said.endsWith('end')).toBe(true);
});
