/**
 * The parts of mathjs in use. Loading mathjs whole takes most of a second; the build replaces this module by a bundle
 * of just these parts, which loads in a fortieth of that.
 */
export {
	create,
	lusolveDependencies,
	type MathNode,
	parseDependencies,
	unitDependencies,
} from 'mathjs';
