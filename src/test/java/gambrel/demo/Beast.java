package gambrel.demo;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One line of the quarter's plan.
 *
 * @param hot grams on the rail, of the whole body or mob
 * @param dressing hot weight in thousandths of the live weight; 0 where it was never weighed alive
 * @param cut the days on which it was cut; empty while it hangs
 * @param style which way it was cut
 * @param traits what happened to it
 * @param owner a customer, {@code shop}, or blank where {@code shares.csv} names the owners
 */
record Beast(
    String id,
    String species,
    String category,
    LocalDate killed,
    long hot,
    int dressing,
    List<LocalDate> cut,
    String style,
    Set<String> traits,
    String age,
    String fat,
    String owner,
    int head,
    String tags,
    String mark) {

  private static final Map<Character, String> SPECIES =
      Map.of('B', "beef", 'L', "lamb", 'P', "pork", 'G', "goat", 'D', "game");

  static Beast of(String line) {
    String[] cell = line.split("\\|", -1);
    for (int i = 0; i < cell.length; i++) {
      cell[i] = cell[i].strip();
    }
    return new Beast(
        cell[0],
        SPECIES.get(cell[0].charAt(0)),
        cell[1],
        day(cell[2]),
        Long.parseLong(cell[3]) * 100,
        Integer.parseInt(cell[4]),
        Arrays.stream(cell[5].split(" ")).filter(d -> !d.isEmpty()).map(Beast::day).toList(),
        cell[6],
        Set.of(cell[7].split(" ")),
        cell[8],
        cell[9],
        cell[10],
        Integer.parseInt(cell[11]),
        cell[12],
        cell[13]);
  }

  private static LocalDate day(String monthDay) {
    return LocalDate.parse("2026-" + monthDay);
  }

  boolean is(String trait) {
    return traits.contains(trait);
  }

  /** What the rail operator keys: the shop's number, or the number on the animal's own tag. */
  String keyed() {
    return is("tag") ? tags : id;
  }

  /** The digits of the id, from which the shop makes its batch numbers. */
  String number() {
    return id.substring(2);
  }

  /** Kilograms in a pack of mince, as the owner asked; the counter takes trays. */
  int mincePack() {
    return switch (style) {
      case "counter" -> 6;
      case "boneless" -> number().endsWith("2") ? 1 : 2;
      default -> 2;
    };
  }

  /** The round figures that farmers' crush scales give; a guess is rounder still. */
  long live() {
    long step = is("guess") ? 50_000 : species.equals("beef") ? 2_000 : 500;
    return (hot * 1000 / dressing + step / 2) / step * step;
  }
}
