package gambrel.insight.month.yields;

import gambrel.bench.Plant;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.BodyReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One body's yields, which are drawn once and kept: so each time from bodies just balanced. */
@State(Scope.Benchmark)
@OperationsPerInvocation(Plant.BODIES)
public class YieldBench {
  private BodyReader reader;
  private List<BodyBalance> known;
  private List<BodyBalance> fresh;

  /** Makes the bodies. */
  @Setup
  public void make() throws Exception {
    var night = Plant.made().night();
    reader = new BodyReader(night.shop().settings(), night.batches());
    known = night.bodies().values().stream().map(account -> account.balance()).toList();
  }

  /** Forgets what was drawn. */
  @Setup(Level.Invocation)
  public void forget() {
    fresh = known.stream().map(body -> reader.read(body.weighings())).toList();
  }

  /** Take-home, bone, fat and trim in per cent. */
  @Benchmark
  public Object yields() {
    var yields = new ArrayList<Optional<BigFraction>>();
    for (var body : fresh) {
      for (var figure : YieldFigure.values()) {
        yields.add(figure.figure().percent(body));
      }
    }
    return yields;
  }
}
