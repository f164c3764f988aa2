import type { ProgressWords } from '../progress-words.js';
import type { EnglishTerms } from './forms-en.js';

const two = (value: number): string => String(value).padStart(2, '0');

export const progressIn = ({ cut }: EnglishTerms): ProgressWords => ({
  name: 'Progress',
  page: (n) => `progress ${n}`,
  stages: {
    layout: 'layout',
    key: 'key',
    'second-key': 'second key',
    check: 'check',
    director: 'director',
    supervisor: 'supervisor',
    'in-between': 'in-between',
    'in-between-check': 'in-between check',
    finish: 'finish',
    background: 'background',
    shoot: 'shoot',
    edit: 'edit',
  },
  day: 'day',
  retakes: 'retakes',
  late: 'late',
  dayOfYear: (month, day) => `${two(month)}-${two(day)}`,
  states: { started: 'started', done: 'done', retake: 'RETAKE', open: 'open' },
  daysLate: (days) => `! ${days} ${days === 1 ? 'day' : 'days'} late`,
  legend: 'A day alone: done. In brackets: due. ! late.',
  columns: {
    cut,
    title: 'title',
    drawings: 'drawings',
    stage: 'stage',
    rate: 'rate',
    person: 'person',
    cuts: `${cut}s`,
    pay: 'to be paid',
  },
  total: 'total',
  nobody: 'nobody named',
  units: { cut, key: 'key', 'in-between': 'in-between', drawing: 'drawing', second: 'second', foot: 'foot' },
  rate: (amount, currency, unit) => `${amount} ${currency} per ${unit}`,
});
