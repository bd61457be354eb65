package gambrel.files.tables;

import gambrel.insight.cause.LikelyCauses;
import gambrel.insight.cause.Suggestion;
import gambrel.trade.account.CustomerAccount;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Unfinished;
import gambrel.trade.shop.Correction;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Data files about what is not finished: accounts, bodies, and what probably went wrong. */
public final class OpenTables {
  private OpenTables() {}

  /** All of them; {@code accounts} have tonight's statements too. */
  public static List<Table> of(Night night, List<CustomerAccount> accounts, LikelyCauses causes) {
    return List.of(accounts(night, accounts), rail(night), causes(causes));
  }

  /** What each customer was charged, has paid and owes. */
  private static Table accounts(Night night, List<CustomerAccount> accounts) {
    var currency = night.shop().settings().currency();
    return new Columns<CustomerAccount>()
        .add("customer", CustomerAccount::customer)
        .add("statements", account -> account.statements().size())
        .add("charges", account -> account.charges().decimal(currency))
        .add("tax", account -> account.tax().decimal(currency))
        .add("paid", account -> account.paid().decimal(currency))
        .add("due", account -> account.due().decimal(currency))
        .add("oldest", CustomerAccount::oldest)
        .table("accounts.csv", accounts::stream);
  }

  /** Every body that is open or held. */
  private static Table rail(Night night) {
    return new Columns<Unfinished>(night.shop().settings().unit())
        .add("body", row -> row.account().body().id())
        .add("customer", OpenTables::owners)
        .add("species", row -> row.account().body().species().id())
        .add("killed", row -> row.account().body().killed())
        .add("days", Unfinished::days)
        .add("state", row -> row.account().decision().state().id())
        .add("reason", row -> NightTables.reasons(row.account()))
        .add("standing_kg", Unfinished::standing)
        .add("cut_kg", Unfinished::cut)
        .add("due", Unfinished::due)
        .table("rail.csv", () -> Unfinished.of(night).stream());
  }

  private static String owners(Unfinished row) {
    var owners = row.account().body().owners().keySet();
    return owners.stream().sorted(ByteOrder.IDS).collect(Collectors.joining(";"));
  }

  /**
   * A suggestion with one of its corrections.
   *
   * @param rank 1 for the best of its body
   * @param correction empty if there is nothing to paste
   */
  private record Cause(
      String body, int rank, Suggestion suggestion, Optional<Correction> correction) {
    /** The rows of a body's suggestion; one without corrections has one row. */
    static Stream<Cause> of(String body, int rank, Suggestion suggestion) {
      return suggestion.corrections().isEmpty()
          ? Stream.of(new Cause(body, rank, suggestion, Optional.empty()))
          : suggestion.corrections().stream()
              .map(c -> new Cause(body, rank, suggestion, Optional.of(c)));
    }

    static Stream<Cause> of(String body, List<Suggestion> best) {
      return IntStream.range(0, best.size()).boxed().flatMap(i -> of(body, i + 1, best.get(i)));
    }

    static Function<Cause, Object> cell(Function<Correction, String> value) {
      return row -> row.correction().map(value);
    }
  }

  /** What was suggested for each body, best first. */
  private static Table causes(LikelyCauses causes) {
    return new Columns<Cause>()
        .add("body", Cause::body)
        .add("rank", Cause::rank)
        .add("cause", row -> row.suggestion().cause().id())
        .add("scale", Cause.cell(Correction::scale))
        .add("ticket", Cause.cell(Correction::ticket))
        .add("field", Cause.cell(Correction::field))
        .add("value", Cause.cell(Correction::value))
        .add("loss_before_pct", row -> row.suggestion().lossBefore())
        .add("loss_after_pct", row -> row.suggestion().lossAfter())
        .table(
            "causes.csv",
            () ->
                causes.byBody().entrySet().stream()
                    .flatMap(body -> Cause.of(body.getKey(), body.getValue())));
  }
}
