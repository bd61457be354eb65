package gambrel.demo;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The rail: hot on the day of the kill, cold the next morning, again before cutting. */
final class Rail {
  /** Chill shrink of the average body in ten-thousandths of the hot weight. */
  private static final Map<String, Integer> CHILL =
      Map.of("beef", 172, "lamb", 270, "goat", 450, "pork", 255, "game", 0);

  private final Floor floor;
  private final Dice dice = new Dice("rail");

  Rail(Floor floor) {
    this.floor = floor;
  }

  /** Hangs a body up to its cutting, if it has come that far: what it then weighs, in grams. */
  long hang(Beast beast) {
    var hot = split(beast, beast.hot());
    if (!beast.species().equals("game")) {
      var shift = floor.slaughter(beast.killed());
      shift.after(beast.species().equals("beef") ? 1500 : 400);
      hot.forEach(part -> weigh(shift, beast, part, "91"));
    }
    long bruise = beast.is("bruise") ? bruise(beast) / hot.size() : 0;
    var cold = hot.stream().map(p -> p.grams(chilled(beast, p.grams() - bruise))).toList();
    cold.forEach(part -> weigh(floor.chiller(coldDay(beast)), beast, part, "92"));
    return age(beast, cold);
  }

  /** A part that hangs on its own, with the last figure of its codes. */
  private record Hung(String which, long grams) {
    Hung grams(long changed) {
      return new Hung(which, changed);
    }
  }

  private List<Hung> split(Beast beast, long grams) {
    var parts = new ArrayList<Hung>();
    if (beast.species().equals("beef")) {
      long left = grams * dice.between(495, 505) / 1000;
      parts.add(new Hung(beast.is("lr") ? "2" : "1", left));
      parts.add(new Hung(beast.is("lr") ? "3" : "1", grams - left));
      return parts;
    }
    long rest = grams;
    for (int head = beast.head(); head > 0; head--) {
      long one = head == 1 ? rest : dice.vary(rest / head, 50);
      parts.add(new Hung("0", one));
      rest -= one;
    }
    return parts;
  }

  /** Meat cut off on the rail on the day of the kill, in grams. */
  private long bruise(Beast beast) {
    floor.bench2.weigh(floor.offal(beast.killed()).after(300), "805", 1_340).body(beast.id());
    return 1_340;
  }

  private void weigh(Shift shift, Beast beast, Hung part, String step) {
    floor
        .rail
        .weigh(shift.after(dice.between(35, 110)), step + part.which(), part.grams())
        .body(beast.keyed());
  }

  private long chilled(Beast beast, long hot) {
    int ofDay = new Dice("chiller" + beast.killed()).around(-25, 25);
    int shrink = CHILL.get(beast.species()) + (beast.species().equals("beef") ? ofDay : ofDay / 2);
    return hot - hot * dice.vary(shrink, 100) / 10_000;
  }

  private LocalDate coldDay(Beast beast) {
    boolean shotOnSaturday = beast.species().equals("game");
    return beast.killed().plusDays(shotOnSaturday ? 2 : 1);
  }

  private long age(Beast beast, List<Hung> cold) {
    long before = cold.stream().mapToLong(Hung::grams).sum();
    if (beast.cut().isEmpty() || !beast.species().equals("beef")) {
      return before;
    }
    var cutting = beast.cut().get(0);
    long days = ChronoUnit.DAYS.between(coldDay(beast), cutting);
    if (days < 3) {
      return before;
    }
    int shrink = dice.between(23, 29);
    var aged = cold.stream().map(p -> p.grams(p.grams() - p.grams() * shrink * days / 10_000));
    var parts = beast.is("quarters") ? aged.flatMap(this::quarters).toList() : aged.toList();
    if (beast.is("aged21")) {
      reweighEarlier(beast, cold, shrink);
    }
    if (!beast.is("noaged")) {
      parts.forEach(part -> weigh(floor.chiller(cutting), beast, part, "93"));
    }
    return parts.stream().mapToLong(Hung::grams).sum();
  }

  private void reweighEarlier(Beast beast, List<Hung> cold, int shrink) {
    var week = beast.killed().plusDays(14);
    cold.stream()
        .map(part -> part.grams(part.grams() - part.grams() * shrink * 13 / 10_000))
        .forEach(part -> weigh(floor.chiller(week), beast, part, "93"));
  }

  private Stream<Hung> quarters(Hung side) {
    long hind = side.grams() * dice.between(478, 492) / 1000;
    return Stream.of(new Hung("4", hind), new Hung("5", side.grams() - hind));
  }
}
