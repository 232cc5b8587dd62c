export { type BotOptions, EVENTS_PATH, type SlackBot, startSlackBot } from './bot.js';
export { openProgramLog } from './log.js';
export { type Page, pagesOf } from './render.js';
export { readSettings, type Settings } from './settings.js';
