package gambrel.files.csv;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

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
  private final Set<String> resembled = new HashSet<>();
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
    for (boolean exact : List.of(true, false)) {
      for (int i = 0; i < names.size(); i++) {
        if (!meant.get(i).isEmpty() && (!exact || names.get(i).equals(meant.get(i)))) {
          positions.putIfAbsent(meant.get(i), i);
        }
      }
    }
    byPlain.values().removeAll(positions.keySet());
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      String as = meant.get(i);
      if (as.isEmpty() && !name.isBlank()) {
        var near = nearest(plain(name), byPlain.keySet()).map(byPlain::get);
        near.ifPresent(resembled::add);
        differ(
            name,
            near.map(like -> Notice.of(NoticeCode.COLUMN_UNKNOWN).with("known", like))
                .orElse(Notice.of(NoticeCode.COLUMN_OTHER)));
      } else if (!as.isEmpty() && positions.get(as) != i) {
        differ(name, Notice.of(NoticeCode.COLUMN_UNKNOWN, "TWICE"));
      } else if (!name.equals(as) && !name.isBlank()) {
        differ(name, Notice.of(NoticeCode.COLUMN_NAME).with("known", as));
      }
    }
  }

  private void differ(String name, Notice notice) {
    differences.add(new Difference(name, notice.with("name", name)));
  }

  /** A name without what does not count in a comparison. */
  public static String plain(String name) {
    return NOT_COMPARED.matcher(name).replaceAll("").toLowerCase(Locale.ROOT);
  }

  /** The known name with the fewest changes, if they are few enough; of several the first. */
  public static Optional<String> nearest(String plain, Collection<String> lacking) {
    return Stream.of(1, 2)
        .flatMap(
            most ->
                lacking.stream()
                    .filter(known -> known.length() >= (most == 1 ? SHORTEST : LONG))
                    .filter(known -> isWithin(most, plain, known)))
        .findFirst();
  }

  /**
   * Whether at most {@code most} times to add, leave out or change a letter, or exchange two
   * neighbours, make one text of the other.
   */
  private static boolean isWithin(int most, String one, String other) {
    if (Math.abs(one.length() - other.length()) > most || one.isEmpty() || other.isEmpty()) {
      return one.length() + other.length() <= most;
    }
    String rest = one.substring(1);
    String otherRest = other.substring(1);
    if (one.charAt(0) == other.charAt(0)) {
      return isWithin(most, rest, otherRest);
    }
    return most > 0
        && (isWithin(most - 1, rest, other)
            || isWithin(most - 1, one, otherRest)
            || isWithin(most - 1, rest, otherRest)
            || rest.startsWith(other.substring(0, 1))
                && otherRest.startsWith(one.substring(0, 1))
                && isWithin(most - 1, rest.substring(1), otherRest.substring(1)));
  }

  /** The index of each known name that the file has; of two with one name the one as known. */
  public Map<String, Integer> positions() {
    return positions;
  }

  /** The known names that the file lacks, and that a name of the file is much like. */
  public Set<String> resembled() {
    return resembled;
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
    differences.stream()
        .filter(d -> d.notice().code() != NoticeCode.COLUMN_OTHER)
        .forEach(d -> to.accept(d.notice().at(place.apply(d.name()))));
  }
}
