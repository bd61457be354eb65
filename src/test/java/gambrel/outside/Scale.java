package gambrel.outside;

/**
 * A scale of a room. Weights are thousandths of the shop's unit.
 *
 * @param id of the scale
 * @param division the smallest step
 * @param capacity the most that it weighs
 * @param accuracy its class, or empty
 */
record Scale(String id, long division, long capacity, String accuracy) {
  /** What it shows of a weight. */
  long shows(double weight) {
    return Math.round(weight / division) * division;
  }
}
