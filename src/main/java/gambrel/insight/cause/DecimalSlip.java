package gambrel.insight.cause;

import gambrel.trade.measure.Weight;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.weighing.SetAside;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds weights that are ten or a hundred times too large or too small for what was weighed. */
final class DecimalSlip extends Finder {
  private static final long PENALTY = 100;

  DecimalSlip(RowIndex rows, BodyFacts suspect) {
    super(rows, suspect);
  }

  @Override
  Stream<Candidate> candidates() {
    return Stream.concat(
        suspect.weighings().stream().flatMap(this::slips),
        rows.night().ledger().setAside().stream().flatMap(this::overCapacity));
  }

  /** A weight far from that of others, with the point where the weight comes near theirs. */
  private Stream<Candidate> slips(Weighing row) {
    var range = rows.ranges().ofOthers(row).filter(r -> r.isFar(row.net().hundredThousandths()));
    boolean typed = !rows.cell(row, Field.NET).isEmpty() && rows.cell(row, Field.GROSS).isEmpty();
    return range.isPresent() && typed && rows.isUncorrected(row)
        ? Stream.of(1, -1, 2, -2)
            .filter(places -> range.get().isNear(moved(row.net().decimal(), places)))
            .map(places -> candidate(row, row.shown().scaleByPowerOfTen(places)))
            .map(candidate -> candidate.comparedWith(range.get().phrase()))
        : Stream.empty();
  }

  private static long moved(BigDecimal net, int places) {
    return Weight.of(net.scaleByPowerOfTen(places)).hundredThousandths();
  }

  private Candidate candidate(Weighing row, BigDecimal net) {
    var change = RowChange.net(row, Tares.plain(net), Optional.empty(), rows.unit());
    return Candidate.of(Cause.DECIMAL, change, PENALTY);
  }

  /** A weight beyond what the scale can weigh is set aside and so in no sum. */
  private Stream<Candidate> overCapacity(SetAside aside) {
    return Stream.of(aside)
        .filter(a -> a.bodies().equals(List.of(suspect.id())) && a.effective())
        .filter(a -> a.notice().code() == NoticeCode.OVER_CAPACITY)
        .map(a -> rows.row(a.notice().place()))
        .filter(row -> row.get(Field.GROSS).isEmpty())
        .flatMap(row -> Stream.of(-1, -2).flatMap(places -> smaller(row, places).stream()));
  }

  private Optional<Candidate> smaller(ExportRow row, int places) {
    try {
      var net = new BigDecimal(row.get(Field.NET)).scaleByPowerOfTen(places);
      return rows.alone(row.with(Field.NET, net.toPlainString()))
          .filter(rows::isUncorrected)
          .filter(this::isNearOthers)
          .map(weighing -> candidate(weighing, net))
          .map(c -> c.comparedWith(Phrase.of("CAUSE.CAPACITY")).notEstimated());
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private boolean isNearOthers(Weighing weighing) {
    return rows.ranges()
        .ofOthers(weighing)
        .filter(range -> range.isNear(weighing.net().hundredThousandths()))
        .isPresent();
  }
}
