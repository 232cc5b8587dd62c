export { type BotOptions, EVENTS_PATH, type SlackBot, startSlackBot } from './bot.js';
export { diagnoseSlack } from './diagnosis.js';
export { openProgramLog } from './log.js';
export { type Page, pagesOf } from './render.js';
export { botScopes } from './scopes.js';
export { readSettings, type Settings } from './settings.js';
