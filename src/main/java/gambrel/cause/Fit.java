package gambrel.cause;

/**
 * A suggestion and how well it fits.
 *
 * @param suggestion what to say
 * @param cost low is good, on the scale of {@link Band#strain}
 * @param kind what it has in common with others of which only the best is worth saying
 */
record Fit(Suggestion suggestion, long cost, String kind) {}
