package gambrel.wording;

import gambrel.cuts.Region;
import gambrel.cuts.Species;
import gambrel.shop.Outcome;
import gambrel.statement.KeepingView;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;

/**
 * How to keep and cook what is in the boxes: cold storage chart and safe minimum temperatures of the
 * US Food Safety and Inspection Service, which name beef, veal, lamb and pork.
 */
final class KeepingPart {
  private static final Set<Species> COVERED =
      Set.of(Species.BEEF, Species.VEAL, Species.LAMB, Species.PORK);

  private KeepingPart() {}

  /** Empty where the source says nothing of what the household got. */
  static Optional<KeepingView> of(Subject subject) {
    if (!COVERED.contains(subject.body().species()) || !subject.is(Outcome.CUT)) {
      return Optional.empty();
    }
    var foods = Food.of(subject);
    var wording = subject.wording();
    return foods.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new KeepingView(
                foods.stream().map(food -> row(subject, food)).toList(),
                wording.say("keeping.fridge", temperature(subject, "4", "40")),
                wording.say("keeping.freezer", temperature(subject, "-18", "0")),
                wording.say("keeping.source")));
  }

  private static KeepingView.Row row(Subject subject, Food food) {
    var wording = subject.wording();
    return new KeepingView.Row(
        wording.say("keeping." + food.key()),
        food.fridge().map(span -> wording.say("keeping.days", span)).orElse(wording.say("keeping.ask")),
        food.freezer().map(span -> months(wording, span)).orElse(wording.say("keeping.ask")),
        switch (food.heat()) {
          case CUT -> wording.say("keeping.rest", temperature(subject, "62.8", "145"));
          case GROUND -> temperature(subject, "71.1", "160");
          case NONE -> "";
        });
  }

  private static String months(Wording wording, String span) {
    return wording.say(span.equals("1") ? "keeping.month" : "keeping.months", span);
  }

  private static String temperature(Subject subject, String celsius, String fahrenheit) {
    boolean american = subject.settings().region() == Region.US;
    String number = subject.formats().number(new BigDecimal(american ? fahrenheit : celsius));
    return subject.wording().say(american ? "keeping.fahrenheit" : "keeping.celsius", number);
  }
}
