package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyGroup;
import gambrel.insight.month.figures.MonthBody;
import gambrel.pages.words.Wording;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The forms of a chart's points: one for each of the first groups of bodies, one for all others.
 */
enum ChartMark {
  CIRCLE,
  SQUARE(-1, -1, 1, -1, 1, 1, -1, 1, -1, -1),
  TRIANGLE(0, -1, 1, 1, -1, 1, 0, -1),
  DIAMOND(0, -1, 1, 0, 0, 1, -1, 0, 0, -1);

  private static final int SMALL = 3;
  private static final int LARGE = 4;

  private final List<Integer> corners;

  ChartMark(Integer... corners) {
    this.corners = List.of(corners);
  }

  /** The form of a body; without several groups all bodies have the same. */
  static ChartMark of(List<BodyGroup> groups, MonthBody body) {
    int group =
        IntStream.range(0, groups.size())
            .filter(i -> groups.get(i).holds(body))
            .findFirst()
            .orElse(groups.size());
    return groups.size() > 1 ? values()[Math.min(group, DIAMOND.ordinal())] : CIRCLE;
  }

  /** The corners of a point as a closed line: {@code x,y x,y ...}; empty for a circle. */
  String outline(int x, int y, boolean filled) {
    int size = filled ? LARGE : SMALL;
    return IntStream.range(0, corners.size() / 2)
        .map(i -> 2 * i)
        .mapToObj(i -> x + size * corners.get(i) + "," + (y + size * corners.get(i + 1)))
        .collect(Collectors.joining(" "));
  }

  /** Whose form it is. */
  String words(List<BodyGroup> groups, Wording wording) {
    String group = this == DIAMOND ? "" : groups.get(ordinal()).name();
    return wording.say("summary.chart." + name().toLowerCase(Locale.ROOT), group);
  }
}
