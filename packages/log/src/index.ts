export type { Head } from './database.js';
export { ENTRY_KINDS, type Entry, type EntryKind, LIMITS, type NewEntry } from './entry.js';
export { LOG_ERROR_CODES, LogError, type LogErrorCode } from './errors.js';
export type { FindOptions, LogFilter } from './find.js';
export type { Json } from './json.js';
export type { Log, LogOptions } from './log.js';
export { openLog } from './open.js';
export type { ChainFault, ChainProblem, ShopReport, VerifyReport } from './verify.js';
