package gambrel.statement;

import java.util.List;
import java.util.Map;

/**
 * The owner's month, ready to be set. Whatever is empty does not show.
 *
 * @param page what every page carries
 * @param words fixed words by key, see {@link Words#labels()}
 * @param shop whose month it is
 * @param heading the month
 * @param known as of when it is known
 * @param first what needs a look, and five figures against last year
 * @param story the month in a few sentences
 * @param held what waits for a person
 * @param shrink weight lost, by whose bodies they are
 * @param losses the chapter on weight lost
 * @param charts losses in order of kill
 * @param yields the chapter on what the bodies gave
 * @param pace the chapter on work on the block
 * @param value the chapter on what the cuts were worth
 * @param batches what was made
 * @param money the chapter on charges and payments
 * @param year the chapter on the year; empty but in December and where asked for
 * @param bodies one line each
 * @param bodiesMore how many more there are, or empty
 * @param unit the unit of all weights in tables
 * @param currency the currency of all money in tables
 */
public record SummaryView(
    PageView page,
    Map<String, String> words,
    ShopView shop,
    String heading,
    String known,
    FirstPage first,
    List<String> story,
    List<Held> held,
    List<ShrinkGroup> shrink,
    ShrinkChapter losses,
    List<ChartView> charts,
    YieldsChapter yields,
    PaceChapter pace,
    ValueChapter value,
    List<BatchRow> batches,
    MoneyChapter money,
    YearChapter year,
    List<BodyRow> bodies,
    String bodiesMore,
    String unit,
    String currency) {
  /** Copies the collections. */
  public SummaryView {
    words = Map.copyOf(words);
    story = List.copyOf(story);
    held = List.copyOf(held);
    charts = List.copyOf(charts);
    shrink = List.copyOf(shrink);
    batches = List.copyOf(batches);
    bodies = List.copyOf(bodies);
  }

  /**
   * A figure and what stands behind it.
   *
   * @param text the figure, or empty where not known
   * @param bodies how many bodies it is of, or empty
   */
  public record Counted(String text, String bodies) {}

  /**
   * Shrink of one owner's kind of bodies: customers' or the shop's own, never added together.
   *
   * @param title whose they are
   * @param rows a species each
   */
  public record ShrinkGroup(String title, List<ShrinkRow> rows) {
    /** Copies the rows. */
    public ShrinkGroup {
      rows = List.copyOf(rows);
    }
  }

  /**
   * Weight lost by a species.
   *
   * @param species its name
   * @param chill chill shrink, % of hot
   * @param chillWeight the same as a weight
   * @param ageing ageing shrink, % of cold
   * @param ageingWeight the same as a weight
   * @param bench bench loss, % of the weight into the boning room
   * @param benchWeight the same as a weight
   */
  public record ShrinkRow(
      String species,
      Counted chill,
      String chillWeight,
      Counted ageing,
      String ageingWeight,
      Counted bench,
      String benchWeight) {}

  /**
   * What was made of several bodies' trim.
   *
   * @param batch its id
   * @param product what it was made into
   * @param in meat that went in
   * @param added what was added
   * @param out what came out
   * @param loss what is missing, or empty
   * @param percent the same as a share of what went in, or empty
   * @param state in words
   */
  public record BatchRow(
      String batch,
      String product,
      String in,
      String added,
      String out,
      String loss,
      String percent,
      String state) {}

  /**
   * A body of the month. What is not known is empty.
   *
   * @param body its id
   * @param owner whose it is
   * @param kind species and class
   * @param killed the date
   * @param hot weight
   * @param cold weight
   * @param boning weight into the boning room
   * @param takeHome weight
   * @param bench bench loss, weight
   * @param chillPercent of hot
   * @param benchPercent of the weight into the boning room
   * @param homePercent take-home of cold
   * @param state in a word
   * @param waits whether a person must look at it
   */
  public record BodyRow(
      String body,
      String owner,
      String kind,
      String killed,
      String hot,
      String cold,
      String boning,
      String takeHome,
      String bench,
      String chillPercent,
      String benchPercent,
      String homePercent,
      String state,
      boolean waits) {}
}
