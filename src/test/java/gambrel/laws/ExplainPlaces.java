package gambrel.laws;

import gambrel.insight.cause.LikelyCauses;
import gambrel.oracle.ExactNight;
import gambrel.pages.explain.Explanation;
import gambrel.trade.reckoning.Night;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** The figures in what {@code explain} prints. */
final class ExplainPlaces {
  private static final Pattern WAITS = Pattern.compile("  waits: loss-high: loss (\\S+) .*");

  private final ExactNight exact;
  private final Agreement agreement;

  ExplainPlaces(ExactNight exact, Agreement agreement) {
    this.exact = exact;
    this.agreement = agreement;
  }

  void compare(Night night, String body) {
    var lines = Explanation.of(night, LikelyCauses.NONE, body).orElseThrow();
    var seen = new HashSet<String>();
    var numbers = exact.body(body);
    String heading = "";
    boolean begins = true;
    for (var line : lines) {
      heading = begins ? line : heading;
      begins = line.isEmpty();
      var waits = WAITS.matcher(line);
      if (waits.matches()) {
        agreement.number("explain " + body, waits.group(1), numbers.get("cutting_loss"));
      }
      if (line.length() > 27 && !line.startsWith("    ")) {
        var name = line.substring(0, 26).strip();
        var value = line.substring(26).strip().split("  ", 2)[0];
        figure(body, heading, name, value, seen);
      }
    }
    var all = new HashSet<>(DataPlaces.COLUMNS);
    all.removeAll(seen);
    agreement.same("explain " + body + ", figures that are missing", "[]", all.toString());
  }

  private void figure(
      String body, String heading, String name, String value, HashSet<String> seen) {
    var place = "explain " + body + ", " + heading + ", " + name;
    if (heading.equals("On the rail") || heading.equals("What came of it")) {
      if (DataPlaces.COLUMNS.contains(name)) {
        seen.add(name);
        agreement.number(place, value, exact.body(body).get(name));
      }
    } else if (heading.startsWith("Batch ")) {
      var id = heading.substring("Batch ".length(), heading.lastIndexOf(", "));
      batch(body, id, place, name, value);
    } else if (heading.startsWith("Customer ")) {
      var id = heading.substring("Customer ".length(), heading.indexOf(", share"));
      customer(exact.customer(body, id), place, name, value);
    }
  }

  private void batch(String body, String id, String place, String name, String value) {
    var numbers = exact.batches().get(id);
    if (name.equals("part of this body")) {
      agreement.number(place, value, exact.batchParts(body).get(id));
    } else if (List.of("meat in", "added", "out", "loss").contains(name)) {
      agreement.number(place, value, numbers.get(name.replace(' ', '_')));
    }
  }

  private void customer(Map<String, BigFraction> numbers, String place, String name, String value) {
    if (name.equals("take home")) {
      agreement.number(place, value, numbers.get("take_home"));
    } else if (name.startsWith("batch ")) {
      agreement.number(place, value, numbers.get(name.replaceFirst(" ", ":")));
    } else if (numbers.containsKey("item:" + name)) {
      agreement.number(place, value, numbers.get("item:" + name));
    }
  }
}
