/** A thread of the program that compiles and prints cuts for the one that was called: src/host/worker-threads.ts starts it. */
const { join } = require('node:path');
const { parentPort, workerData } = require('node:worker_threads');
const { load } = require('./load.js');

const { serveCuts, nodeHost } = load(join(__dirname, '../dist'), workerData.command).program;
serveCuts(nodeHost(), {
  post: (message) => parentPort.postMessage(message),
  listen: (onMessage) => void parentPort.on('message', onMessage),
});
