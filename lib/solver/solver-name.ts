/** What solves the models, for the record kept with each result. */
export const SOLVER = "HiGHS, highs 1.15.3";
