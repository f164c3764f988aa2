// Loaded before the program that is measured: says on descriptor 3 what the process took.
const { writeSync } = require('node:fs');

process.on('exit', () => {
  // Kilobytes and microseconds.
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  writeSync(3, JSON.stringify({ peakMb: maxRSS / 1024, seconds: (userCPUTime + systemCPUTime) / 1e6 }));
});
