package gambrel.files.csv;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * The names of a file's columns or keys, compared with the names that it may have. Case, blanks,
 * hyphens and underscores do not count. A name that is not known but differs by a letter or two
 * from one that the file lacks is probably that name mistyped.
 */
public final class NameComparison {
  private static final Pattern NOT_COMPARED = Pattern.compile("[\\s\\h_-]+");

  /** Known names of fewer letters are never resembled; two differ too easily. */
  private static final int SHORTEST = 4;

  /** Known names of fewer letters are resembled with one change only. */
  private static final int LONG = 6;

  private final Map<String, Integer> positions = new HashMap<>();
  private final List<Difference> differences = new ArrayList<>();

  /** A name that is not written as a known one, and the notice of it. */
  private record Difference(String name, Notice notice) {}

  /**
   * Compares names.
   *
   * @param names as the file has them, in order; blank ones are passed over
   * @param known the names that the file may have
   */
  public NameComparison(List<String> names, Collection<String> known) {
    var byPlain = new LinkedHashMap<String, String>();
    known.forEach(name -> byPlain.putIfAbsent(plain(name), name));
    var meant = names.stream().map(name -> byPlain.getOrDefault(plain(name), "")).toList();
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).equals(meant.get(i))) {
        positions.putIfAbsent(meant.get(i), i);
      }
    }
    for (int i = 0; i < names.size(); i++) {
      positions.putIfAbsent(meant.get(i), i);
    }
    positions.remove("");
    var lacking =
        byPlain.keySet().stream().filter(p -> !positions.containsKey(byPlain.get(p))).toList();
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      if (!name.isBlank()) {
        var notice =
            meant.get(i).isEmpty()
                ? unknown(nearest(plain(name), lacking).map(byPlain::get))
                : known(name, meant.get(i), positions.get(meant.get(i)) == i);
        notice.ifPresent(n -> differences.add(new Difference(name, n.with("name", name))));
      }
    }
  }

  /** A name without what does not count in a comparison. */
  public static String plain(String name) {
    return NOT_COMPARED.matcher(name).replaceAll("").toLowerCase(Locale.ROOT);
  }

  private static Optional<Notice> known(String name, String known, boolean first) {
    if (!first) {
      return Optional.of(Notice.of(NoticeCode.COLUMN_UNKNOWN, "TWICE"));
    }
    return name.equals(known)
        ? Optional.empty()
        : Optional.of(Notice.of(NoticeCode.COLUMN_NAME).with("known", known));
  }

  private static Optional<Notice> unknown(Optional<String> resembled) {
    return resembled
        .map(known -> Notice.of(NoticeCode.COLUMN_UNKNOWN).with("known", known))
        .or(() -> Optional.of(Notice.of(NoticeCode.COLUMN_OTHER)));
  }

  private static Optional<String> nearest(String plain, List<String> lacking) {
    return lacking.stream()
        .filter(known -> Math.abs(plain.length() - known.length()) <= mostChanges(known))
        .filter(known -> changes(plain, known) <= mostChanges(known))
        .min(Comparator.comparing(known -> changes(plain, known)));
  }

  private static int mostChanges(String known) {
    return known.length() < SHORTEST ? 0 : known.length() < LONG ? 1 : 2;
  }

  /**
   * The fewest letters to add, leave out or change, or neighbours to exchange, that make one text
   * of the other: the optimal string alignment distance.
   */
  static int changes(String one, String other) {
    var least = new int[one.length() + 1][other.length() + 1];
    for (int i = 0; i <= one.length(); i++) {
      for (int j = 0; j <= other.length(); j++) {
        if (i == 0 || j == 0) {
          least[i][j] = i + j;
          continue;
        }
        int same = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        int either = Math.min(least[i - 1][j], least[i][j - 1]) + 1;
        least[i][j] = Math.min(either, least[i - 1][j - 1] + same);
        boolean exchanged =
            i > 1
                && j > 1
                && one.charAt(i - 1) == other.charAt(j - 2)
                && one.charAt(i - 2) == other.charAt(j - 1);
        if (exchanged) {
          least[i][j] = Math.min(least[i][j], least[i - 2][j - 2] + 1);
        }
      }
    }
    return least[one.length()][other.length()];
  }

  /** The index of each known name that the file has; of two with one name the one as known. */
  public Map<String, Integer> positions() {
    return positions;
  }

  /**
   * Gives a notice for each name that is not written as a known one.
   *
   * @param place the place of a name
   */
  public void report(Function<String, Place> place, Consumer<Notice> to) {
    differences.forEach(d -> to.accept(d.notice().at(place.apply(d.name()))));
  }

  /** As {@link #report}, for a file that may have columns of any other name. */
  public void reportMistakes(Function<String, Place> place, Consumer<Notice> to) {
    report(
        place,
        notice -> {
          if (notice.code() != NoticeCode.COLUMN_OTHER) {
            to.accept(notice);
          }
        });
  }
}
