package gambrel.weighing;

import gambrel.bench.Plant;
import java.util.ArrayList;
import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One weighing packed and unpacked, in lists of a body each. */
@State(Scope.Benchmark)
@OperationsPerInvocation(Plant.ROWS)
public class PackingBench {
  private final WeighingPacker packer = new WeighingPacker();
  private final List<List<Weighing>> lists = new ArrayList<>();
  private List<byte[]> packed;

  /** Makes the weighings. */
  @Setup
  public void make() throws Exception {
    var weighings = Plant.made().night().ledger().weighings();
    int left = Plant.ROWS;
    for (String body : weighings.bodies()) {
      var own = weighings.of(body);
      lists.add(List.copyOf(own.subList(0, Math.min(left, own.size()))));
      left -= lists.get(lists.size() - 1).size();
    }
    packed = lists.stream().map(packer::pack).toList();
  }

  /** Packs. */
  @Benchmark
  public Object pack() {
    var bytes = new ArrayList<byte[]>(lists.size());
    lists.forEach(list -> bytes.add(packer.pack(list)));
    return bytes;
  }

  /** Unpacks. */
  @Benchmark
  public Object unpack() {
    var unpacked = new ArrayList<Weighing>(Plant.ROWS);
    packed.forEach(bytes -> packer.unpack(bytes, unpacked));
    return unpacked;
  }
}
