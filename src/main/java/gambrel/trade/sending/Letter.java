package gambrel.trade.sending;

import gambrel.trade.register.RegisterRow;
import gambrel.trade.shop.Customer;
import java.util.List;

/**
 * One message: the statements of a customer that were issued in one night.
 *
 * @param customer to whom
 * @param address where it goes
 * @param statements in register order, at least one
 */
public record Letter(Customer customer, String address, List<RegisterRow> statements) {
  /** Copies the statements. */
  public Letter {
    statements = List.copyOf(statements);
  }

  /** The bodies that it is about. */
  public List<String> bodies() {
    return statements.stream().map(RegisterRow::body).toList();
  }
}
