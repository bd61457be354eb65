package gambrel.files.layout;

import gambrel.files.barcode.BadBarcode;
import gambrel.files.barcode.ElementString;
import gambrel.files.barcode.InStorePlan;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a barcode tells of a weighing.
 *
 * @param body its lot, or empty
 * @param code its cut or item, or empty
 * @param pieces its count, or empty
 * @param net its net weight
 * @param date when it was packed
 * @param fault why it cannot be read, or tells no net weight that it should; or empty
 */
record BarcodeFacts(
    String body,
    String code,
    String pieces,
    Optional<WeightText.Amount> net,
    Optional<LocalDate> date,
    String fault) {
  /** No barcode. */
  static final BarcodeFacts NONE =
      new BarcodeFacts("", "", "", Optional.empty(), Optional.empty(), "");

  /**
   * Reads a barcode.
   *
   * @param plan how the shop lays out its in-store numbers
   * @param thisYear decides the century of two-digit years
   */
  static BarcodeFacts read(String text, Optional<InStorePlan> plan, int thisYear) {
    if (text.isEmpty()) {
      return NONE;
    }
    try {
      var own = plan.isPresent() ? plan.get().read(text) : Optional.<InStorePlan.Reading>empty();
      return own.isPresent() ? of(own.get()) : of(ElementString.parse(text), thisYear);
    } catch (BadBarcode e) {
      return faulty(e.getMessage());
    }
  }

  private static BarcodeFacts faulty(String why) {
    return new BarcodeFacts("", "", "", Optional.empty(), Optional.empty(), why);
  }

  private static BarcodeFacts of(InStorePlan.Reading own) {
    var net = new WeightText.Amount(own.weight(), Optional.empty());
    return new BarcodeFacts("", own.item(), "", Optional.of(net), Optional.empty(), "");
  }

  private static BarcodeFacts of(ElementString label, int thisYear) {
    var net =
        label
            .net()
            .map(weight -> new WeightText.Amount(weight.value(), Optional.of(weight.unit())));
    return new BarcodeFacts(
        label.lot().orElse(""),
        label.cut().orElse(""),
        label.count().map(BigInteger::toString).orElse(""),
        net,
        label.date(thisYear),
        net.isEmpty() && label.hasGross() ? "gives a gross weight, not a net one" : "");
  }
}
