package gambrel.month.yields;

import gambrel.balance.BodyBalance;
import gambrel.balance.Drawn;
import gambrel.weighing.Weighing;
import java.util.Optional;

/** Who cut a body, by what {@code bench.csv} says of its weighings. */
public final class Boners {
  private static final Drawn<BodyBalance, Optional<String>> NAMED = new Drawn<>(Boners::named);

  private Boners() {}

  /**
   * The one boner whom its weighings in the boning room name; empty where none is named, or several:
   * what two people cut tells of neither.
   */
  public static Optional<String> of(BodyBalance body) {
    return NAMED.of(body);
  }

  private static Optional<String> named(BodyBalance body) {
    var names =
        body.cuts().stream().map(Weighing::boner).filter(n -> !n.isEmpty()).distinct().toList();
    return names.size() == 1 ? Optional.of(names.get(0)) : Optional.empty();
  }
}
