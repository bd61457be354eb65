package gambrel.bench;

import com.sun.management.GarbageCollectionNotificationInfo;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import javax.management.ListenerNotFoundException;
import javax.management.NotificationEmitter;
import javax.management.NotificationListener;
import javax.management.openmbean.CompositeData;

/**
 * The most memory in use, seen before and after each collection: the peaks of a heap's parts, added
 * up, are of different moments.
 */
final class PeakHeap implements AutoCloseable {
  private final AtomicLong most = new AtomicLong();
  private final Set<String> heap =
      ManagementFactory.getMemoryPoolMXBeans().stream()
          .filter(pool -> pool.getType() == MemoryType.HEAP)
          .map(pool -> pool.getName())
          .collect(Collectors.toSet());
  private final NotificationListener listener =
      (notification, source) -> {
        var data = (CompositeData) notification.getUserData();
        var info = GarbageCollectionNotificationInfo.from(data).getGcInfo();
        look(info.getMemoryUsageBeforeGc());
        look(info.getMemoryUsageAfterGc());
      };

  PeakHeap() {
    emitters().forEach(emitter -> emitter.addNotificationListener(listener, null, null));
  }

  private static Set<NotificationEmitter> emitters() {
    return ManagementFactory.getGarbageCollectorMXBeans().stream()
        .map(NotificationEmitter.class::cast)
        .collect(Collectors.toSet());
  }

  private void look(Map<String, MemoryUsage> pools) {
    look(
        pools.entrySet().stream()
            .filter(pool -> heap.contains(pool.getKey()))
            .mapToLong(pool -> pool.getValue().getUsed())
            .sum());
  }

  private void look(long used) {
    most.accumulateAndGet(used, Math::max);
  }

  /** In bytes. */
  long most() {
    look(ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed());
    return most.get();
  }

  @Override
  public void close() {
    for (var emitter : emitters()) {
      try {
        emitter.removeNotificationListener(listener);
      } catch (ListenerNotFoundException e) {
        throw new IllegalStateException(e);
      }
    }
  }
}
