/** What one day aboard takes from the fresh tank and gives to the gray tank. */
export interface DailyWater {
	readonly freshL: number;
	readonly grayL: number;
	/** by use [L/day] */
	readonly parts: {
		readonly showersL: number;
		readonly dishesL: number;
		readonly washingL: number;
		readonly drinkingL: number;
		readonly flushingL: number;
	};
}

/**
 * Water of a day. Everything used for showers, dishes and washing runs to the gray tank; what is drunk or cooked with
 * does not, and what flushes a toilet goes to its own tank.
 */
export function dailyWater(habits: {
	readonly people: number;
	readonly showersPerPersonDay: number;
	readonly showerMin: number;
	readonly showerLMin: number;
	readonly dishesLDay: number;
	readonly washingLPersonDay: number;
	/** 0 where drinking water is carried in bottles */
	readonly drinkingLPersonDay: number;
	/** 0 where the toilet does not flush from the tank */
	readonly flushingLPersonDay: number;
}): DailyWater {
	const { people } = habits;
	const showersL = people * habits.showersPerPersonDay * habits.showerMin * habits.showerLMin;
	const washingL = people * habits.washingLPersonDay;
	const drinkingL = people * habits.drinkingLPersonDay;
	const flushingL = people * habits.flushingLPersonDay;
	const grayL = showersL + habits.dishesLDay + washingL;
	return {
		freshL: grayL + drinkingL + flushingL,
		grayL,
		parts: { showersL, dishesL: habits.dishesLDay, washingL, drinkingL, flushingL },
	};
}
