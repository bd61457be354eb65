package gambrel.files.tables;

import gambrel.trade.balance.Outputs;
import gambrel.trade.decision.Decision;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** {@code data/bodies.csv}: a row a body, by id. */
final class BodiesTable {
  private static final String COLUMNS =
      "body,species,class,killed,state,live_kg,hot_kg,cold_kg,boning_kg,take_home_kg,meat_home_kg,"
          + "offal_kg,tub_kg,bone_kg,fat_kg,waste_kg,rail_trim_kg,cutting_loss_kg,unweighed_kg,"
          + "balance_u_kg,balance_scale_kg,batch_loss_kg,dressing_pct,chill_shrink_pct,"
          + "ageing_shrink_pct,take_home_of_hot_pct,take_home_of_cold_pct,meat_of_cold_pct,"
          + "days_hung,hours_chilled,reasons";

  private BodiesTable() {}

  static Table of(Night night) {
    return new Table(
        "bodies.csv",
        Table.columns(COLUMNS, night.shop().settings().unit().id()),
        () -> night.bodies().values().stream().map(BodiesTable::row));
  }

  private static List<String> row(BodyAccount account) {
    var body = account.body();
    var balance = account.balance();
    boolean cancelled = account.decision().state() == State.CANCELLED;
    var row =
        new RowBuilder()
            .text(body.id())
            .text(body.species().id())
            .text(body.category())
            .text(body.killed().map(Object::toString).orElse(""))
            .text(account.decision().state().id())
            .weight(cancelled ? Optional.empty() : body.liveWeight())
            .weight(balance.hot())
            .weight(balance.cold())
            .weight(balance.boning());
    outputs(row, balance.outputs());
    var shares = balance.shares();
    return row.share(cancelled ? Optional.empty() : shares.dressing())
        .share(shares.chillShrink())
        .share(shares.ageingShrink())
        .share(shares.takeHomeOfHot())
        .share(shares.takeHomeOfCold())
        .share(shares.meatOfCold())
        .number(balance.daysHung())
        .optional(balance.hoursChilled().map(hours -> Exact.round(hours, 3)))
        .text(reasons(account.decision()))
        .cells();
  }

  private static void outputs(RowBuilder row, Optional<Outputs> outputs) {
    row.weight(outputs.map(Outputs::takeHome))
        .weight(outputs.flatMap(Outputs::meatHome))
        .weight(outputs.map(Outputs::offal))
        .weight(outputs.map(Outputs::tub));
    List<Function<Outputs, Optional<Weight>>> perhaps =
        List.of(Outputs::bone, Outputs::fat, Outputs::waste);
    perhaps.forEach(figure -> row.weight(outputs.flatMap(figure)));
    row.weight(outputs.map(Outputs::railTrim))
        .weight(outputs.flatMap(Outputs::cuttingLoss))
        .weight(outputs.flatMap(Outputs::unweighed))
        .root(outputs.flatMap(Outputs::resolutionSquared))
        .root(outputs.flatMap(Outputs::permittedSquared))
        .weight(outputs.flatMap(Outputs::batchLoss));
  }

  private static String reasons(Decision decision) {
    return decision.reasons().stream()
        .map(reason -> reason.code().id())
        .distinct()
        .collect(Collectors.joining(";"));
  }
}
