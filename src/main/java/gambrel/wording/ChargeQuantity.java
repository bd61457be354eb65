package gambrel.wording;

import gambrel.charge.Bill;
import gambrel.measure.Exact;
import gambrel.shop.Charge;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a charge counts, with its unit. */
final class ChargeQuantity {
  private static final int DECIMALS = 3;

  private ChargeQuantity() {}

  static String of(Bill.Line line, Subject subject) {
    var charge = line.charge();
    var wording = subject.wording();
    String quantity = counted(charge.basis(), line.quantity(), subject);
    boolean least =
        charge.minimum().signum() > 0
            && line.quantity().equals(Exact.fraction(charge.minimum()));
    if (least) {
      return wording.say("charges.minimum", quantity);
    }
    return charge.free().signum() > 0
        ? wording.say(
            "charges.free",
            quantity,
            subject.formats().quantity(Exact.fraction(charge.free()), DECIMALS))
        : quantity;
  }

  private static String counted(Charge.Basis basis, BigFraction quantity, Subject subject) {
    String number = subject.formats().quantity(quantity, DECIMALS);
    long form = quantity.equals(BigFraction.ONE) ? 1 : 2;
    var wording = subject.wording();
    return switch (basis) {
      case LIVE, HOT, COLD, BONING, TUB, PACKED ->
          wording.say("charges.quantity.weight", number, subject.formats().unit());
      case HEAD -> wording.count("charges.quantity.head", form, number);
      case PACK -> wording.count("charges.quantity.pack", form, number);
      case DAY -> wording.count("charges.quantity.day", form, number);
      case SHARE -> wording.count("charges.quantity.share", form, number);
    };
  }
}
