package gambrel.trade.register;

import gambrel.trade.account.CustomerMoney;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One issued statement.
 *
 * @param customer whose
 * @param body of which body
 * @param revision 1 for the first
 * @param issued the run's moment, shop-local
 * @param takeHome the customer's take-home weight
 * @param charges without tax
 * @param tax the tax
 * @param paid by then
 * @param replaces the revision that it replaces
 * @param file relative to the output folder
 * @param sha256 of the document
 * @param figures SHA-256 of the customer's figures
 * @param number its number; empty if it was issued before statements had numbers
 * @param lines its charges; none if it has been replaced, or was issued before they were kept
 */
public record RegisterRow(
    String customer,
    String body,
    int revision,
    LocalDateTime issued,
    Weight takeHome,
    Money charges,
    Money tax,
    Money paid,
    Optional<Integer> replaces,
    String file,
    String sha256,
    String figures,
    Optional<Integer> number,
    List<ChargeLine> lines) {
  /** By customer, body and revision. */
  public static final Comparator<RegisterRow> ORDER =
      Comparator.comparing(RegisterRow::customer, ByteOrder.IDS)
          .thenComparing(RegisterRow::body, ByteOrder.IDS)
          .thenComparing(RegisterRow::revision);

  /** Copies the lines. */
  public RegisterRow {
    lines = List.copyOf(lines);
  }

  /** Whether its charges are not known, although they were kept when it was issued. */
  public boolean lacksLines() {
    boolean charged = !charges.equals(Money.ZERO) || !tax.equals(Money.ZERO);
    return charged && lines.isEmpty() && number.isPresent();
  }

  /** The name of its file without folders. */
  public String fileName() {
    return file.substring(file.lastIndexOf('/') + 1);
  }

  /** Charges and tax less payments. */
  public Money due() {
    return new CustomerMoney(charges, tax, paid).due();
  }
}
