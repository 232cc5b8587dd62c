export { type BotOptions, EVENTS_PATH, type SlackBot, startSlackBot } from './bot.js';
export { diagnoseSlack } from './diagnosis.js';
export { INSTALL_PATH, REDIRECT_PATH } from './install.js';
export { openProgramLog } from './log.js';
export { type Page, pagesOf } from './render.js';
export { botScopes } from './scopes.js';
export { type InstallSettings, readSettings, type Settings } from './settings.js';
