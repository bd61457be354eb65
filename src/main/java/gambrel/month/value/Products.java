package gambrel.month.value;

import gambrel.balance.BodyBalance;
import gambrel.cuts.Kind;
import gambrel.month.ItemValues;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What end products of a body are worth: packs, tubs into batches and bins, offal left out. Trim
 * without a value of its own is worth what mince is, wherever it goes next; bone, fat and waste
 * without a value are worth nothing.
 */
final class Products {
  private static final String MINCE = "mince";

  private final BodyBalance body;
  private final ItemValues values;

  Products(BodyBalance body, ItemValues values) {
    this.body = body;
    this.values = values;
  }

  /** All of them. */
  List<Weighing> all() {
    return body.weighings().out().stream().filter(w -> !body.weighings().isOffal(w)).toList();
  }

  /** Those of a piece. */
  List<Weighing> under(String piece) {
    var tree = body.weighings().tree();
    return all().stream().filter(w -> tree.isUnder(w.item(), piece)).toList();
  }

  /** Money in the major unit; empty where one of them has no value. */
  Optional<BigFraction> worth(Collection<Weighing> products) {
    var sum = BigFraction.ZERO;
    for (var product : products) {
      var value = value(product);
      if (value.isEmpty()) {
        return Optional.empty();
      }
      sum = sum.add(value.get().multiply(product.net().fraction()));
    }
    return Optional.of(sum);
  }

  private Optional<BigFraction> value(Weighing product) {
    var own = values.of(body.weighings().tree(), product.item());
    if (own.isPresent()) {
      return own;
    }
    return switch (body.weighings().kind(product)) {
      case BONE, FAT, WASTE -> Optional.of(BigFraction.ZERO);
      case TRIM -> values.of(body.weighings().tree(), MINCE);
      default -> Optional.empty();
    };
  }

  /** Whether a weighing is of something that people eat. */
  boolean isFood(Weighing product) {
    var kind = body.weighings().kind(product);
    return product.step() != Step.BIN && (kind == Kind.MEAT || kind == Kind.TRIM);
  }
}
