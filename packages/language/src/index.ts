export { type Decline, declineOf } from './decline.js';
export { changesFor, type Told } from './describe/changes.js';
export { type Description, describe, longestDescription, type Mention } from './describe/describe.js';
export type { Conflict, Given } from './fill.js';
export { longestMessage } from './message.js';
export { type Previous, Reader, type Reading, type ReadOptions } from './read.js';
export type { TypedValue } from './typed.js';
export type { Said } from './words/commands.js';
