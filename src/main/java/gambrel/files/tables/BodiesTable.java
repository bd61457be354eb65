package gambrel.files.tables;

import gambrel.trade.balance.Outputs;
import gambrel.trade.decision.Decision;
import gambrel.trade.decision.State;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import java.util.function.Function;
import java.util.stream.Collectors;

/** {@code data/bodies.csv}: one row for each body, by id. */
final class BodiesTable {
  private BodiesTable() {}

  static Table of(Night night) {
    var columns = new Columns<BodyAccount>(night.shop().settings().unit());
    hung(columns);
    outputs(columns);
    shares(columns);
    return columns
        .add("days_hung", a -> a.balance().daysHung())
        .add("hours_chilled", a -> a.balance().hoursChilled())
        .add("reasons", a -> reasons(a.decision()))
        .table("bodies.csv", () -> night.bodies().values().stream());
  }

  private static void hung(Columns<BodyAccount> columns) {
    columns
        .add("body", a -> a.body().id())
        .add("species", a -> a.body().species().id())
        .add("class", a -> a.body().category())
        .add("killed", a -> a.body().killed())
        .add("state", a -> a.decision().state().id())
        .add("live_kg", a -> a.body().liveWeight().filter(weight -> !isCancelled(a)))
        .add("hot_kg", a -> a.balance().hot())
        .add("cold_kg", a -> a.balance().cold())
        .add("boning_kg", a -> a.balance().boning());
  }

  private static void outputs(Columns<BodyAccount> columns) {
    columns
        .add("take_home_kg", output(Outputs::takeHome))
        .add("meat_home_kg", output(Outputs::meatHome))
        .add("offal_kg", output(Outputs::offal))
        .add("tub_kg", output(Outputs::tub))
        .add("bone_kg", output(Outputs::bone))
        .add("fat_kg", output(Outputs::fat))
        .add("waste_kg", output(Outputs::waste))
        .add("rail_trim_kg", output(Outputs::railTrim))
        .add("cutting_loss_kg", output(Outputs::cuttingLoss))
        .add("unweighed_kg", output(Outputs::unweighed))
        .add("balance_u_kg", output(outputs -> Columns.root(outputs.resolutionSquared())))
        .add("balance_scale_kg", output(outputs -> Columns.root(outputs.permittedSquared())))
        .add("batch_loss_kg", output(Outputs::batchLoss));
  }

  private static Function<BodyAccount, Object> output(Function<Outputs, Object> figure) {
    return account -> account.balance().outputs().map(figure);
  }

  private static void shares(Columns<BodyAccount> columns) {
    columns
        .add("dressing_pct", a -> a.balance().shares().dressing().filter(s -> !isCancelled(a)))
        .add("chill_shrink_pct", a -> a.balance().shares().chillShrink())
        .add("ageing_shrink_pct", a -> a.balance().shares().ageingShrink())
        .add("take_home_of_hot_pct", a -> a.balance().shares().takeHomeOfHot())
        .add("take_home_of_cold_pct", a -> a.balance().shares().takeHomeOfCold())
        .add("meat_of_cold_pct", a -> a.balance().shares().meatOfCold());
  }

  private static boolean isCancelled(BodyAccount account) {
    return account.decision().state() == State.CANCELLED;
  }

  private static String reasons(Decision decision) {
    return decision.reasons().stream()
        .map(reason -> reason.code().id())
        .distinct()
        .collect(Collectors.joining(";"));
  }
}
