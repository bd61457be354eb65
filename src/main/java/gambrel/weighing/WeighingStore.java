package gambrel.weighing;

import gambrel.shop.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Gathers weighings in any order, and packs them whenever there are too many. */
final class WeighingStore {
  /** The bodies of a busy month: most figures are drawn body by body, a month's one after another. */
  private static final int UNPACKED = 100_000;

  private final int kept;
  private final WeighingPacker packer = new WeighingPacker();
  private final Unpacked unpacked;
  private final Map<String, Gathered> byBody = new LinkedHashMap<>();
  private final Map<String, Gathered> byBatch = new LinkedHashMap<>();
  private final Gathered loose = new Gathered();
  private final List<Weighing> tests = new ArrayList<>();
  private final Set<Gathered> waiting = new LinkedHashSet<>();
  private int asTheyAre;
  private boolean packs;

  /** A store that keeps so many weighings as they are. */
  WeighingStore(int kept) {
    this.kept = kept;
    this.unpacked = new Unpacked(Math.min(kept, UNPACKED));
  }

  /** The weighings of one list: some packed, in the order in which they came, the latest not yet. */
  private static final class Gathered {
    private final List<byte[]> packed = new ArrayList<>(1);
    private List<Weighing> waiting = new ArrayList<>();
    private int size;

    private void pack(WeighingPacker packer) {
      packed.add(packer.pack(waiting));
      waiting = new ArrayList<>(0);
    }
  }

  void add(Weighing weighing) {
    boolean named = !weighing.body().isEmpty();
    if (named) {
      add(weighing, byBody.computeIfAbsent(weighing.body(), b -> new Gathered()));
    }
    if (weighing.takesPartInBatch()) {
      add(weighing, byBatch.computeIfAbsent(weighing.batch(), b -> new Gathered()));
    } else if (!named) {
      add(weighing, loose);
    }
    if (weighing.step() == Step.TEST) {
      tests.add(weighing);
    }
    if (asTheyAre > kept) {
      packs = true;
      packWaiting();
    }
  }

  private void add(Weighing weighing, Gathered to) {
    to.waiting.add(weighing);
    to.size++;
    waiting.add(to);
    asTheyAre++;
  }

  private void packWaiting() {
    waiting.parallelStream().forEach(list -> list.pack(packer));
    waiting.clear();
    asTheyAre = 0;
  }

  /** All of them; the store is empty then. */
  Weighings weighings() {
    if (packs) {
      packWaiting();
    }
    return new Weighings(
        lists(byBody),
        lists(byBatch),
        list(loose),
        tests.stream().sorted(Weighing.BY_TIME).toList());
  }

  private Map<String, List<Weighing>> lists(Map<String, Gathered> gathered) {
    var lists = new LinkedHashMap<String, List<Weighing>>();
    gathered.forEach((id, list) -> lists.put(id, list(list)));
    gathered.clear();
    return lists;
  }

  private List<Weighing> list(Gathered gathered) {
    return packs
        ? new PackedWeighings(packer, unpacked, gathered.packed, gathered.size)
        : gathered.waiting.stream().sorted(Weighing.BY_TIME).toList();
  }
}
