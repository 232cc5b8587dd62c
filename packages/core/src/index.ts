export { type Network, solveNetwork } from './electrical/network.js';
export { type SimulatedHours, simulatedHours } from './energy/simulated-hours.js';
export {
	type HourlyPowers,
	runHours,
	type SimulatedBank,
	type Simulation,
	type SimulationTotals,
} from './energy/simulation.js';
export type { Phrasebook } from './phrases/phrasebook.js';
export { vanPhrases } from './phrases/van.js';
export { wordsOf } from './phrases/words.js';
export { evaluateSum } from './quantity/arithmetic.js';
export { fromBase, toBase, unitsOf } from './quantity/convert.js';
export {
	type Kind,
	type KindName,
	kindNames,
	kindOf,
	type UnitHabit,
	type UnitOfKind,
} from './quantity/kinds.js';
export { shownIn, write, writeNumber } from './quantity/write.js';
export { type RuleSet, ruleSetOf } from './rules/rules.js';
export { designCooling, designHeating, recordLow } from './solar/climate.js';
export { editDistance } from './solar/edit-distance.js';
export {
	findPlaces,
	lookUpPlace,
	type Place,
	type PlaceLookup,
	type PlaceMatch,
} from './solar/places.js';
export { type StrutSwing, strutSwing } from './structure/strut-swing.js';
export { awgSizes, type ConductorSize, conductorSize, metricSizes } from './tables/conductors.js';
export { typicalLoad } from './tables/loads.js';
export {
	type Context,
	defaultContext,
	type Language,
	languages,
	type Region,
	regions,
} from './topic/context.js';
export { type AnyTopic, type Need, type System, systems } from './topic/declare.js';
export {
	baseUnitOf,
	type Field,
	type FieldMeta,
	type Fields,
	type FieldType,
	type FieldValue,
} from './topic/field.js';
export { acceptedBy } from './topic/problems.js';
export { runTopic } from './topic/run.js';
export {
	type Assumption,
	assumptionSchema,
	type Finding,
	findingSchema,
	type Missing,
	type Neighbour,
	neighbourSchema,
	type Outcome,
	type Refusal,
	type Result,
	resultSchema,
	type Severity,
	type Sizing,
	type Step,
	severities,
	sizingSchema,
	stepSchema,
	type Tipping,
	tippingSchema,
} from './topic/sizing.js';
export { phrase, type Say, type Speaking, sayFor } from './topic/translate.js';
export { monthNames, showValue } from './topic/value.js';
export { topicNamed, topics } from './topics/index.js';
export { type Borrowed, borrowFrom } from './van/borrow.js';
export { checkVan, type NotKnown, type VanCheck, type VanFinding } from './van/check.js';
export type { AnyEquipment, Values } from './van/equipment/declare.js';
export { equipment, equipmentOf } from './van/equipment/index.js';
export { isOutdated, type Rest, restSchema, restValue } from './van/rests.js';
export {
	type SummaryBank,
	type SummaryLoad,
	type SummaryWeight,
	type VanSummary,
	vanSummary,
} from './van/summary.js';
export {
	type Change,
	changed,
	changeSchema,
	emptyVan,
	freeId,
	labelOf,
	type Piece,
	settled,
	type Van,
} from './van/van.js';
export { calculationVersion } from './version.js';
