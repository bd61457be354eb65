package gambrel.pages.owner.month;

import gambrel.pages.views.ChartView.Frame;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Names beside the points of a chart: none touches another, or a named point, and none is nearer to
 * another's point than to its own.
 */
final class ChartNames {
  /** The height of a line of text, and the width of a letter. */
  static final int LINE = 10;

  private static final int LETTER = 6;

  /** The highest base line: words above it would leave the drawing. */
  private static final int HIGHEST = 7;

  /** How far a name stands from its point, and half the size of one. */
  private static final int APART = 7;

  private static final int POINT = 4;

  /** In how many lines above or below a point its name may stand. */
  private static final int LINES = 3;

  private ChartNames() {}

  /**
   * A name that wants a place.
   *
   * @param text the name
   * @param x place of its point
   * @param y place of its point
   * @param above whether it stands above its point if it can
   */
  record Name(String text, int x, int y, boolean above) {}

  /**
   * Where a name stands.
   *
   * @param middle of it
   * @param base its base line
   */
  record Place(int middle, int base) {}

  private record Box(int left, int top, int right, int bottom) {
    /** How far a point lies from it, the longer way along the axes. */
    int distance(Name point) {
      int beside = Math.max(left - point.x(), point.x() - right);
      return Math.max(0, Math.max(beside, Math.max(top - point.y(), point.y() - bottom)));
    }

    boolean touches(Box other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
  }

  /** About how wide a text is. */
  static int width(String text) {
    return LETTER * text.length();
  }

  /** The places of names, the first before the others; those without room are missing. */
  static Map<Name, Place> of(Frame plot, List<Name> names) {
    var places = new HashMap<Name, Place>();
    var taken = new ArrayList<Box>();
    for (var n : names) {
      taken.add(new Box(n.x() - POINT, n.y() - POINT, n.x() + POINT, n.y() + POINT));
    }
    for (var name : names) {
      int half = width(name.text()) / 2;
      int middle = Math.min(Math.max(name.x(), plot.left() + half), plot.right() - half);
      bases(name)
          .filter(base -> base >= HIGHEST && base <= plot.bottom())
          .mapToObj(base -> new Box(middle - half, base - LINE + 1, middle + half, base))
          .filter(box -> taken.stream().noneMatch(box::touches))
          .filter(box -> names.stream().noneMatch(n -> box.distance(n) < box.distance(name)))
          .findFirst()
          .ifPresent(
              box -> {
                taken.add(box);
                places.put(name, new Place(middle, box.bottom()));
              });
    }
    return places;
  }

  /** The base lines at which a name may stand, the best first. */
  private static IntStream bases(Name name) {
    var above = IntStream.range(0, LINES).map(line -> name.y() - APART - line * LINE);
    var below = IntStream.range(0, LINES).map(line -> name.y() + 2 * APART + line * LINE);
    return name.above() ? IntStream.concat(above, below) : IntStream.concat(below, above);
  }
}
