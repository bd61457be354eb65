package gambrel.month.yields;

import gambrel.cuts.Species;
import gambrel.month.Ratio;
import gambrel.month.Spread;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What like bodies gave in a month.
 *
 * @param species their species
 * @param split by what they are told apart
 * @param name their class or boner; empty for all of the species
 * @param cells a figure each, in the order of {@link YieldFigure}
 */
public record YieldLine(Species species, Split split, String name, List<Cell> cells) {
  /** Copies the cells. */
  public YieldLine {
    cells = List.copyOf(cells);
  }

  /** By what bodies of a species are told apart. */
  public enum Split {
    /** Not at all. */
    ALL,
    /** By the shop's word for their class. */
    CLASS,
    /** By who cut them. */
    BONER;

    /** Its name in data files. */
    public String id() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * One figure.
   *
   * @param figure which
   * @param month all weight over all weight, in the month
   * @param before the bodies of the twelve months before, in per cent; empty if there are none
   */
  public record Cell(YieldFigure figure, Ratio month, Optional<Spread> before) {}

  /** Whether the month has any figure. */
  public boolean isKnown() {
    return cells.stream().anyMatch(cell -> cell.month().isKnown());
  }
}
