package gambrel.trade.decision;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.notice.Phrase;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.UnreadRow;
import gambrel.trade.weighing.Ledger;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/** The rows of the shop folder that cannot be read, and the bodies that they could concern. */
public final class UnreadRows {
  private final List<UnreadRow> rows;
  private final Ledger ledger;

  /** The rows of a shop that are not dated later than {@code asOf}. */
  public UnreadRows(Shop shop, Ledger ledger, OffsetDateTime asOf) {
    this.ledger = ledger;
    this.rows =
        shop.unread().stream()
            .filter(row -> UnreadRow.holds(row.place().file()))
            .filter(row -> row.from().filter(from -> from.isAfter(asOf)).isEmpty())
            .toList();
  }

  /**
   * The reasons for which a body waits.
   *
   * @param goingOut those that hold only what would go out; else the others
   */
  public List<Reason> reasons(BodyBalance balance, boolean goingOut) {
    return rows.stream()
        .filter(row -> row.holdsWhatGoesOut() == goingOut && concerns(row, balance))
        .map(UnreadRows::reason)
        .toList();
  }

  private static Reason reason(UnreadRow row) {
    String variant = row.column().isEmpty() ? ".ROW" : row.cell().isEmpty() ? ".BLANK" : "";
    return new Reason(
            ReasonCode.ROW_UNREAD, row.place().toString(), Phrase.of("REASON.ROW_UNREAD" + variant))
        .with("file", row.place().file())
        .with("line", row.place().line())
        .with("column", row.column())
        .with("cell", row.cell());
  }

  /** Whether all that a row names legibly fits a body. */
  private boolean concerns(UnreadRow row, BodyBalance balance) {
    return row.named("body").filter(id -> !id.equals(balance.body().id())).isEmpty()
        && row.named("species").filter(id -> !id.equals(balance.body().species().id())).isEmpty()
        && (row.named("customer").filter(id -> !isOf(id, row, balance)).isEmpty()
            || row.ofShares() && isNobodys(balance.body()))
        && row.named("item").filter(item -> !isWeighed(item, balance)).isEmpty()
        && (!row.ofBatch() || isIn(row.named("batch"), balance))
        && (row.named("ticket").isEmpty() || isNamed(ledger.named().get(row.place()), balance));
  }

  /** Whether no row says whose a body is, so that a share of it may stand in one not read. */
  private static boolean isNobodys(Body body) {
    return body.customer().isEmpty() && body.shares().isEmpty();
  }

  /** Whether a customer has a part of a body, or is the one whom a row of this body names. */
  private static boolean isOf(String customer, UnreadRow row, BodyBalance balance) {
    var body = balance.body();
    return body.owners().containsKey(customer)
        || row.named("body").isPresent() && body.customer().equals(customer)
        || balance.weighings().all().stream().anyMatch(w -> w.customer().equals(customer));
  }

  /** Whether a body has meat in a batch, or in any if the row does not say which. */
  private static boolean isIn(Optional<String> named, BodyBalance balance) {
    var batch = named.map(IdIndex::withoutZeros);
    return balance.batches().stream()
        .map(b -> IdIndex.withoutZeros(b.batch().id()))
        .anyMatch(id -> batch.isEmpty() || batch.get().equals(id));
  }

  private static boolean isWeighed(String item, BodyBalance balance) {
    var tree = balance.weighings().tree();
    return balance.weighings().all().stream().anyMatch(w -> tree.isUnder(w.item(), item));
  }

  /** Whether the rows that a correction names are about a body; any, if they name none. */
  private static boolean isNamed(Ledger.NamedBodies named, BodyBalance balance) {
    return named.unnamed()
        || named.bodies().contains(balance.body().id())
        || balance.batches().stream().anyMatch(b -> named.batches().contains(b.batch().id()));
  }
}
