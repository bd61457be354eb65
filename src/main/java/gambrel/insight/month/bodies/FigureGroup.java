package gambrel.insight.month.bodies;

import gambrel.trade.cuts.Item;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The bodies, or the part of them, that a figure of a month is about. */
public interface FigureGroup {
  /** Its name in data files; empty for all bodies. */
  String id();

  /** How the bodies of a table of yields are grouped. */
  enum By {
    /** Not grouped. */
    ALL,
    /** By the class that the shop gives them. */
    CLASS,
    /** By boner. */
    BONER;

    /** Its name in data files and words. */
    public String id() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * Bodies of one class or one boner.
   *
   * @param by how they are grouped
   * @param name their class or boner; empty for all of the species
   */
  record Like(By by, String name) implements FigureGroup {
    @Override
    public String id() {
      return (by.id() + ' ' + name).strip();
    }
  }

  /** Bodies of one named boner or supplier. */
  record Named(String name) implements FigureGroup {
    @Override
    public String id() {
      return name;
    }
  }

  /** One body. */
  record OfBody(MonthBody body) implements FigureGroup {
    @Override
    public String id() {
      return "body " + body.id();
    }
  }

  /**
   * A part of the bodies.
   *
   * @param item the part
   * @param boner who boned it; empty for all boners
   */
  record Part(Item item, Optional<String> boner) implements FigureGroup {
    @Override
    public String id() {
      return (item.id() + ' ' + boner.orElse("")).strip();
    }
  }

  /**
   * A way to cut a piece.
   *
   * @param piece the piece
   * @param items what it was packed as
   */
  record Way(Item piece, List<Item> items) implements FigureGroup {
    @Override
    public String id() {
      return piece.id() + " as " + items.stream().map(Item::id).collect(Collectors.joining("+"));
    }
  }
}
