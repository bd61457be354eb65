package gambrel.outside;

/**
 * How many of some trials must come out well. In a long run the rate itself is asked for; in a
 * short one, a number that a program which keeps the rate falls short of once in a hundred times.
 *
 * @param exact whether it is a long run
 */
record Binomial(boolean exact) {
  private static final double CHANCE = 0.01;

  /** The fewest successes of some trials at a rate. */
  int least(int trials, double rate) {
    if (exact) {
      return (int) Math.ceil(trials * rate - 1e-9);
    }
    int least = 0;
    double below = 0;
    while (least < trials) {
      below += probability(trials, least, rate);
      if (below > CHANCE) {
        return least;
      }
      least++;
    }
    return least;
  }

  /** The most failures of some trials at a rate. */
  int most(int trials, double rate) {
    return trials - least(trials, 1 - rate);
  }

  private static double probability(int trials, int successes, double rate) {
    double probability = 1;
    for (int i = 0; i < successes; i++) {
      probability *= rate * (trials - i) / (i + 1);
    }
    return probability * Math.pow(1 - rate, trials - successes);
  }
}
