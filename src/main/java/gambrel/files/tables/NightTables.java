package gambrel.files.tables;

import gambrel.insight.statistics.ControlChart;
import gambrel.insight.statistics.ShrinkSeries;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.balance.PieceBalance;
import gambrel.trade.decision.State;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.weighing.RowCount;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The data files of a night. */
public final class NightTables {
  private NightTables() {}

  /** All of them but the register and the notices. */
  public static List<Table> of(Night night) {
    return List.of(
        bodies(night),
        CutsTable.of(night),
        pieces(night),
        batches(night),
        shrink(night),
        rows(night));
  }

  /** Everything that a person should know. */
  public static Table notices(Collection<Notice> notices) {
    return new Columns<Notice>()
        .add("severity", notice -> notice.severity().id())
        .add("code", notice -> notice.code().id())
        .add("file", notice -> notice.place().file())
        .add("line", notice -> Optional.of(notice.place().line()).filter(line -> line > 0))
        .add("scale", Notice::scale)
        .add("ticket", Notice::ticket)
        .add("body", Notice::body)
        .add("message", NoticeWords.ENGLISH::message)
        .add("advice", NoticeWords.ENGLISH::advice)
        .add("raw", Notice::raw)
        .table("notices.csv", () -> notices.stream().sorted(Notice.ORDER));
  }

  /** One row for each body, by id. */
  private static Table bodies(Night night) {
    return NightTables.<BodyAccount>columns(night)
        .add("body", a -> a.body().id())
        .add("species", a -> a.body().species().id())
        .add("class", a -> a.body().category())
        .add("killed", a -> a.body().killed())
        .add("state", a -> a.decision().state().id())
        .add("live_kg", a -> a.body().liveWeight().filter(weight -> !isCancelled(a)))
        .add("hot_kg", a -> a.balance().hot())
        .add("cold_kg", a -> a.balance().cold())
        .add("boning_kg", a -> a.balance().boning())
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
        .add("batch_loss_kg", output(Outputs::batchLoss))
        .add("dressing_pct", a -> a.balance().shares().dressing().filter(s -> !isCancelled(a)))
        .add("chill_shrink_pct", a -> a.balance().shares().chillShrink())
        .add("ageing_shrink_pct", a -> a.balance().shares().ageingShrink())
        .add("take_home_of_hot_pct", a -> a.balance().shares().takeHomeOfHot())
        .add("take_home_of_cold_pct", a -> a.balance().shares().takeHomeOfCold())
        .add("meat_of_cold_pct", a -> a.balance().shares().meatOfCold())
        .add("days_hung", a -> a.balance().daysHung())
        .add("hours_chilled", a -> a.balance().hoursChilled())
        .add("reasons", NightTables::reasons)
        .table("bodies.csv", () -> night.bodies().values().stream());
  }

  private static Function<BodyAccount, Object> output(Function<Outputs, Object> figure) {
    return account -> account.balance().outputs().map(figure);
  }

  private static boolean isCancelled(BodyAccount account) {
    return account.decision().state() == State.CANCELLED;
  }

  /** The codes of why a body is open or held, each once. */
  static String reasons(BodyAccount account) {
    return account.decision().reasons().stream()
        .map(reason -> reason.code().id())
        .distinct()
        .collect(Collectors.joining(";"));
  }

  /** A piece weighed on the block, with its body. */
  private record Piece(BodyAccount account, PieceBalance balance) {}

  /** Every piece weighed on the block and what came of it. */
  private static Table pieces(Night night) {
    return NightTables.<Piece>columns(night)
        .add("body", piece -> piece.account().body().id())
        .add("item", piece -> piece.balance().item())
        .add("block_kg", piece -> piece.balance().block())
        .add("out_kg", piece -> piece.balance().out())
        .add("loss_kg", piece -> piece.balance().loss())
        .add(
            "balance_u_kg", piece -> Columns.root(Optional.of(piece.balance().resolutionSquared())))
        .table(
            "pieces.csv",
            () ->
                night.bodies().values().stream()
                    .flatMap(a -> a.balance().pieces().stream().map(p -> new Piece(a, p))));
  }

  /** What went into every batch and what came out. */
  private static Table batches(Night night) {
    return NightTables.<BatchBalance>columns(night)
        .add("batch", batch -> batch.batch().id())
        .add("product", batch -> batch.batch().product())
        .add("meat_in_kg", BatchBalance::meatIn)
        .add("added_kg", BatchBalance::added)
        .add("out_kg", BatchBalance::out)
        .add("loss_kg", BatchBalance::loss)
        .add("loss_pct", BatchBalance::lossShare)
        .add("state", batch -> batch.state().id())
        .table("batches.csv", () -> night.batches().values().stream());
  }

  /** The chill shrink of every body with its species' control chart. */
  private static Table shrink(Night night) {
    return NightTables.<ShrinkSeries.Point>columns(night)
        .add("month", row -> YearMonth.from(killed(row)))
        .add("killed", NightTables::killed)
        .add("body", row -> row.body().body().id())
        .add("species", row -> row.body().body().species().id())
        .add("days_hung", row -> row.body().daysHung())
        .add("hours_chilled", row -> row.body().hoursChilled())
        .add("chill_shrink_pct", row -> row.body().shares().chillShrink())
        .add("ageing_shrink_pct", row -> row.body().shares().ageingShrink())
        .add("centre", row -> limit(row, ControlChart::centre))
        .add("lower", row -> limit(row, ControlChart::lower))
        .add("upper", row -> limit(row, ControlChart::upper))
        .add("signal", row -> String.join(";", row.signals()))
        .table("shrink.csv", () -> ShrinkSeries.of(night).stream());
  }

  private static LocalDate killed(ShrinkSeries.Point row) {
    return row.body().body().killed().orElseThrow();
  }

  private static Optional<BigDecimal> limit(
      ShrinkSeries.Point row, Function<ControlChart, Optional<BigDecimal>> limit) {
    return row.chart().flatMap(limit).map(ControlChart::output);
  }

  /** How many rows of every export were used, and how many were not, and why. */
  private static Table rows(Night night) {
    return new Columns<RowCount>()
        .add("file", RowCount::file)
        .add("read", RowCount::read)
        .add("used", RowCount::used)
        .add("repeat", RowCount::repeat)
        .add("void", RowCount::voided)
        .add("set_aside", RowCount::setAside)
        .table("rows.csv", () -> night.ledger().rows().stream());
  }

  private static <T> Columns<T> columns(Night night) {
    return new Columns<>(night.shop().settings().unit());
  }
}
