package gambrel.oracle;

import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** The groups of bodies by which a month's losses are told: all, classes, and bands. */
final class MonthGroups {
  private static final Pattern BAND = Pattern.compile("(days|weight) (\\d*)-(\\d*)");

  private final Map<String, Set<String>> inFile;

  /** With the groups that the file has, see {@link #named}. */
  MonthGroups(Map<String, Set<String>> inFile) {
    this.inFile = inFile;
  }

  /** All bodies, each class, and the bands that the file has. */
  Set<String> of(YearMonth month, String species, MonthLoss loss, List<Months.Member> bodies) {
    var all = new TreeSet<>(Set.of(""));
    bodies.stream()
        .map(m -> m.yield().body.beast.grade())
        .filter(grade -> !grade.isEmpty())
        .forEach(grade -> all.add("category " + grade));
    var bands =
        inFile.getOrDefault(month + " " + loss.id() + "_loss_pct " + species, Set.of()).stream()
            .filter(group -> BAND.matcher(group).matches())
            .toList();
    all.addAll(bands);
    for (var by : List.of("days", "weight")) {
      long banded = bodies.stream().filter(m -> measure(m, by) != null).count();
      long found =
          bodies.stream()
              .flatMap(m -> bands.stream().filter(b -> b.startsWith(by) && isIn(m, b)))
              .count();
      if (found != banded) {
        all.add(by + " bands with each body once");
      }
    }
    return all;
  }

  private static BigFraction measure(Months.Member member, String by) {
    return member.number(by.equals("days") ? "days_hung" : "hot");
  }

  static boolean isIn(Months.Member member, String group) {
    if (group.startsWith("category ")) {
      return group.equals("category " + member.yield().body.beast.grade());
    }
    var band = BAND.matcher(group);
    if (!band.matches()) {
      return true;
    }
    var value = measure(member, band.group(1));
    return value != null
        && (band.group(2).isEmpty() || value.compareTo(Num.of(band.group(2))) >= 0)
        && (band.group(3).isEmpty() || value.compareTo(Num.of(band.group(3))) < 0);
  }

  /** The groups of rows of the file, by month, figure and species. */
  static Map<String, Set<String>> named(List<Map<String, String>> rows) {
    var groups = new TreeMap<String, Set<String>>();
    for (var row : rows) {
      var key = row.get("month") + " " + row.get("figure") + " " + row.get("species");
      groups.computeIfAbsent(key, k -> new TreeSet<>()).add(row.get("group"));
    }
    return groups;
  }
}
