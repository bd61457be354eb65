package gambrel.pages.views;

import java.util.List;
import java.util.Map;

/**
 * Last night and this morning on a page, ready for the template. Empty parts are not shown.
 *
 * @param page what every page carries
 * @param words labels by key, see {@link Words#labels()}
 * @param shop the name of the shop
 * @param heading what it is, and the day
 * @param story the morning in a few sentences; if nothing has to be done, that all is well
 * @param waits what waits for the owner, in groups, worst first
 * @param rail what hangs, is on the block and is not packed yet
 * @param ring whom to ring
 * @param notes such as what was read, or that the register is new
 */
public record MorningView(
    PageView page,
    Map<String, String> words,
    ShopView shop,
    String heading,
    List<String> story,
    List<Waits> waits,
    Rail rail,
    Ring ring,
    List<String> notes) {
  /**
   * A group of things to do.
   *
   * @param title what they have in common
   * @param items each thing
   * @param more how many things have no item, and where they are listed; empty if none
   */
  public record Waits(String title, List<Item> items, String more) {}

  /**
   * A thing to do.
   *
   * @param who the bodies and customers that it concerns, or empty
   * @param message what is wrong
   * @param advice what to do
   * @param rows the places of rows and what stands there; may be none
   * @param likely what probably went wrong, or how to leave a row out; may be none
   */
  public record Item(
      String who, String message, String advice, List<String> rows, List<Likely> likely) {}

  /**
   * What probably went wrong, or how to leave a row out.
   *
   * @param evidence why, in words; may be empty
   * @param advice what to do about it
   * @param lines rows to paste into the corrections; may be none
   */
  public record Likely(String evidence, String advice, List<String> lines) {}

  /**
   * The room.
   *
   * @param hanging the bodies that hang, those to be cut first in front
   * @param chillers whether it is known of any where it hangs
   * @param hangingNote what the days mean on which they are due; may be empty
   * @param onBlock the bodies that are on the block, or cut and not settled
   * @param onBlockNote what is still to come; may be empty
   * @param batches the batches that are not packed yet, those due first in front
   */
  public record Rail(
      List<Hanging> hanging,
      boolean chillers,
      String hangingNote,
      List<OnBlock> onBlock,
      String onBlockNote,
      List<Unpacked> batches) {}

  /**
   * A body that hangs.
   *
   * @param body its id and kind
   * @param owners its owners
   * @param chiller where it hangs, or empty
   * @param killed the day of its kill, or empty
   * @param days days since then, or empty
   * @param weight weight with its unit, or empty
   * @param cutBy the day on which it is due and how that is known, or empty
   * @param now whether that day is today or past
   */
  public record Hanging(
      String body,
      String owners,
      String chiller,
      String killed,
      String days,
      String weight,
      String cutBy,
      boolean now) {}

  /**
   * A body on the block.
   *
   * @param body its id and kind
   * @param owners its owners
   * @param lastCut the day of its last cut, or empty
   * @param boning weight into the boning room with its unit, or empty
   * @param cut weight that came out of it so far, with its unit
   * @param rest what it waits for
   */
  public record OnBlock(
      String body, String owners, String lastCut, String boning, String cut, String rest) {}

  /**
   * A batch that is not packed yet.
   *
   * @param batch its id and product
   * @param of its bodies and their owners
   * @param since the day of its first tub, or empty
   * @param meat weight of the meat in it, with its unit
   * @param due the day on which it is due, or empty
   */
  public record Unpacked(String batch, String of, String since, String meat, String due) {}

  /**
   * Whom to ring.
   *
   * @param issued statements issued in the night
   * @param issuedMore how many issued statements have no row, and where they are listed; empty if
   *     none
   * @param owing who has owed longest, how much and since when, and how many others owe; empty if
   *     nobody
   */
  public record Ring(List<Issued> issued, String issuedMore, String owing) {}

  /**
   * A statement issued in the night.
   *
   * @param customer the customer
   * @param body the id and kind of the body
   * @param revision in words, or empty for the first
   * @param packs the number of packs that are wholly the customer's, or empty
   * @param boxes the weight in the boxes, with its unit
   * @param due what is to be paid of it, with its currency, or empty
   * @param owes what the customer owes in all, with its currency, or empty
   * @param goesBy how it gets to the customer
   */
  public record Issued(
      String customer,
      String body,
      String revision,
      String packs,
      String boxes,
      String due,
      String owes,
      String goesBy) {}
}
