/** What the bots of all platforms share. */

export { buildsOf } from '../build/names.js';
export {
	type Act,
	actOf,
	assumedInputs,
	type FormKind,
	formKinds,
	saidByForm,
	topicOfForm,
	type WordsForm,
	wordsForm,
} from './actions.js';
export {
	type Asked,
	Desk,
	type DeskOptions,
	type MessageAt,
	type Platform,
	type ShownAt,
	type StillOurs,
	TakenOver,
	type Way,
} from './desk.js';
export {
	type Diagnosis,
	databaseDiagnosis,
	good,
	portDiagnosis,
	settingsDiagnosis,
	unsure,
	wrong,
} from './diagnosis.js';
export type { FileRoom, LoadedFile, LoadedReply } from './files.js';
export { FormWords } from './form-words.js';
export { keepHeapSmall } from './heap.js';
export { idsIn, isLead, type Leads } from './leads.js';
export { inReadingOrder } from './order.js';
export { atWork } from './overview.js';
export { defaultPace, type Pace, paceOf } from './pace.js';
export { errorFacts, type ProgramLog, redactedFields } from './program-log.js';
export { sealed, tokenKey, unsealed } from './secrets.js';
export {
	closedServer,
	type Handler,
	HEALTH_PATH,
	METRICS_PATH,
	READY_PATH,
	type Service,
	serveService,
	serviceRoutes,
} from './service.js';
export { commonVariables, Environment } from './settings.js';
export { fitting, offered, suggestionsFor } from './suggestions.js';
export { aroundNumber, pieces, shortened } from './text.js';
export {
	CHANGE_AN_ASSUMPTION,
	FILE_FOR_ONE,
	fileNotSent,
	IN_THE_FILE,
	inLanguage,
	MORE_THAN_FITS,
	PART_UNSHOWN,
	pageWords,
	SENT_AGAIN,
	UNKNOWN_BUTTON,
} from './words.js';
