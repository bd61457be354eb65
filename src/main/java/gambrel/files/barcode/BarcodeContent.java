package gambrel.files.barcode;

import gambrel.files.csv.BadCell;
import gambrel.trade.measure.GivenWeight;
import gambrel.trade.notice.Phrase;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the barcode of a weighing holds.
 *
 * @param body its lot, or empty
 * @param code its cut or item, or empty
 * @param pieces its count, or empty
 * @param nets its net weights
 * @param date the day of packing or production
 * @param fault why it cannot be read or gives no net weight; ends a sentence that begins with it
 */
public record BarcodeContent(
    String body,
    String code,
    String pieces,
    List<GivenWeight> nets,
    Optional<LocalDate> date,
    Optional<Phrase> fault) {

  /** Copies the weights. */
  public BarcodeContent {
    nets = List.copyOf(nets);
  }

  /** The net weight; the first of several. */
  public Optional<GivenWeight> net() {
    return nets.stream().findFirst();
  }

  /**
   * Reads a barcode; an empty text has no content and no fault.
   *
   * @param plan the plan of the shop's in-store numbers
   * @param thisYear decides the century of two-digit years
   */
  public static BarcodeContent read(String text, Optional<InStorePlan> plan, int thisYear) {
    try {
      return text.isEmpty()
          ? empty(Optional.empty())
          : plan.flatMap(own -> own.read(text))
              .orElseGet(() -> ElementString.parse(text).content(thisYear));
    } catch (BadCell e) {
      return empty(Optional.of(e.why()));
    }
  }

  private static BarcodeContent empty(Optional<Phrase> fault) {
    return new BarcodeContent("", "", "", List.of(), Optional.empty(), fault);
  }
}
