package gambrel.insight.month.pace;

import gambrel.trade.cuts.Species;
import java.util.Comparator;

/** What is boned: a kind of piece of a species. */
record PieceKind(Species species, String item) implements Comparable<PieceKind> {
  private static final Comparator<PieceKind> ORDER =
      Comparator.comparing(PieceKind::species).thenComparing(PieceKind::item);

  static PieceKind of(BoningInterval stint) {
    return new PieceKind(stint.species(), stint.item());
  }

  @Override
  public int compareTo(PieceKind other) {
    return ORDER.compare(this, other);
  }
}
