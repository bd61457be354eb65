package gambrel.pages.views;

import java.util.List;
import java.util.Optional;

/**
 * What is in the boxes, cut by cut in the order of the carcase.
 *
 * @param rule a rule on some of the cuts, or empty
 * @param unit head of the column of weights: the unit alone
 * @param packs whether numbers of packs are shown; a share of divided packs has none
 * @param shares whether shares of the take-home weight are shown
 * @param groups the cuts; offal is not among them
 * @param total the take-home weight; empty if there is none
 * @param offal offal, which is not part of take-home and has no percentages
 * @param notes remarks on the list; may be empty
 */
public record CutsView(
    String rule,
    String unit,
    boolean packs,
    boolean shares,
    List<Group> groups,
    Optional<Row> total,
    Optional<Group> offal,
    List<String> notes) {
  /**
   * Cuts that lie together.
   *
   * @param title the part of the carcase, or empty
   * @param rows at least one cut
   */
  public record Group(String title, List<Row> rows) {}

  /**
   * One cut.
   *
   * @param name as the region calls it
   * @param note such as what a batch was made of; may be empty
   * @param packs their number, or empty
   * @param weight without its unit
   * @param share of the take-home weight; the shares of a list add up to 100.0; or empty
   */
  public record Row(String name, String note, String packs, String weight, String share) {}
}
