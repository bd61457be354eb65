package gambrel.pages.owner.month;

import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.Ownership;
import gambrel.insight.month.loss.FurtherDay;
import gambrel.insight.month.loss.Hanging;
import gambrel.trade.measure.Weight;
import java.util.List;

/** What one day more on the rail takes, and what it brings or would have to bring, in sentences. */
record HangingPart(MonthPart.Page page) implements MonthPart {
  private static final int DECIMALS = 2;

  /**
   * What a day more takes off a body of each owner, and whether it pays, for every species of which
   * that is known; for the main one also why it cannot be told. Empty if none hung.
   */
  List<String> answers() {
    return report().furtherDays().stream()
        .filter(
            day ->
                day.weight().isPresent() || mainSpecies().filter(day.species()::equals).isPresent())
        .map(this::answer)
        .toList();
  }

  private String answer(FurtherDay day) {
    String species = wording().kind(day.species());
    String key = "day." + day.whose().id();
    if (day.weight().isEmpty()) {
      String bodies = count(Hanging.ENOUGH_BODIES);
      return say(key + ".few", species, bodies, count(Hanging.ENOUGH_DAYS));
    }
    var weight = day.weight().get();
    if (weight.interval().orElseThrow().lower().signum() < 0) {
      return say(key + ".unsure", species, count(weight.bodies()));
    }
    String lost = formats().weight(Weight.of(weight.value().orElseThrow()), DECIMALS);
    var worth = day.weightWorth().flatMap(MonthFigure::value).map(formats()::money);
    var against =
        day.whose() == Ownership.OWN
            ? day.rise()
                .flatMap(MonthFigure::value)
                .map(rise -> say("number.percent", number(rise, DECIMALS)))
            : day.charge().map(charge -> formats().money(charge.median()));
    return worth.isPresent() && against.isPresent()
        ? say(key, species, lost, worth.get(), against.get())
        : say(key + ".unvalued", species, lost);
  }
}
