package gambrel.weighing;

/**
 * A scale's clock and counter as one file tells of them.
 *
 * @param file the file's path
 * @param scale the scale's id
 */
record Clock(String file, String scale) {}
