package gambrel.trade.balance;

import gambrel.bench.Plant;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Shop;
import java.util.List;
import java.util.Map;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One body of 142 weighings, balanced anew each time. */
@State(Scope.Benchmark)
@OperationsPerInvocation(Plant.BODIES)
public class BodyBench {
  private final HungTree.Cache hung = new HungTree.Cache();
  private Settings settings;
  private BodyReader reader;
  private List<BodyWeighings> bodies;

  /** Makes the bodies. */
  @Setup
  public void make() throws Exception {
    var plant = Plant.made();
    var night = plant.night();
    Shop shop = plant.inputs().shop();
    settings = shop.settings();
    Map<String, BatchBalance> batches = night.batches();
    reader = new BodyReader(settings, batches, night.asOf());
    bodies = night.bodies().values().stream().map(a -> a.balance().weighings()).toList();
  }

  /** Read on the rail, balanced. */
  @Benchmark
  public Object balance() {
    return bodies.stream().map(reader::read).toList();
  }

  /** The rail alone. */
  @Benchmark
  public Object rail() {
    return bodies.stream()
        .map(body -> Rail.of(hung, body, settings.railOf(body.body().species())))
        .toList();
  }
}
