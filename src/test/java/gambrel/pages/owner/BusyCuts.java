package gambrel.pages.owner;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the busy shop makes of a body: invented shares of the weight into the boning room. */
final class BusyCuts {
  /** An item, its share of the body in per cent, and its invented value for a kilo. */
  record Cut(String item, double percent, double value) {}

  private static final List<Cut> T_BONE = List.of(new Cut("t-bone", 5.0, 29));
  private static final List<Cut> OFF_THE_BONE =
      List.of(new Cut("tenderloin", 1.3, 48), new Cut("striploin", 2.9, 36));
  private static final List<Cut> BEEF =
      List.of(
          new Cut("rump-steak", 4.5, 26),
          new Cut("cube-roll", 3, 38),
          new Cut("topside-roast", 5, 19),
          new Cut("silverside-roast", 5, 18),
          new Cut("chuck-steak", 7, 18),
          new Cut("oyster-blade-steak", 3, 20),
          new Cut("brisket-roll", 4, 17),
          new Cut("osso-bucco", 3, 14),
          new Cut("stewing-dice", 5, 16),
          new Cut("stock-bones", 1, 2));
  private static final List<Cut> LAMB =
      List.of(
          new Cut("leg", 29, 19),
          new Cut("loin-chop", 9, 27),
          new Cut("cutlet", 7, 34),
          new Cut("shoulder", 25, 15));
  private static final List<Cut> PORK =
      List.of(
          new Cut("leg-roast", 24, 12),
          new Cut("loin-chop", 17, 18),
          new Cut("belly-slices", 11, 15),
          new Cut("shoulder-roast", 19, 11));

  private BusyCuts() {}

  /** The packs of a body but mince. */
  static List<Cut> of(String species, boolean onTheBone) {
    if (!species.equals("beef")) {
      return species.equals("lamb") ? LAMB : PORK;
    }
    var cuts = new ArrayList<>(onTheBone ? T_BONE : OFF_THE_BONE);
    cuts.addAll(BEEF);
    return cuts;
  }

  private static Stream<Cut> all() {
    return Stream.of(T_BONE, OFF_THE_BONE, BEEF, LAMB, PORK).flatMap(List::stream);
  }

  /** Every item that is packed, but mince. */
  static Stream<String> packed() {
    return Stream.concat(all().map(Cut::item), Stream.of("liver", "sausages")).distinct();
  }

  /** The shop's values, of a kilo or of a pound. */
  static String values(boolean american) {
    double unit = american ? 1 / BusyBench.POUNDS : 1;
    var others = Stream.of(new Cut("mince", 0, 14), new Cut("sausages", 0, 13));
    return Stream.concat(all(), others)
        .collect(Collectors.toMap(Cut::item, Cut::value, (a, b) -> a))
        .entrySet()
        .stream()
        .sorted(Map.Entry.comparingByKey())
        .map(e -> String.format(Locale.ROOT, "%s,%.2f,,", e.getKey(), e.getValue() * unit))
        .collect(Collectors.joining("\n", "item,value,from,to\n", ""));
  }
}
