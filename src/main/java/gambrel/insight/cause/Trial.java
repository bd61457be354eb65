package gambrel.insight.cause;

import gambrel.trade.balance.BatchBalance;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Correction;
import gambrel.trade.shop.Shop;
import gambrel.trade.weighing.SetAside;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Reckons a few bodies anew with more corrections, from the rows that concern them. */
final class Trial {
  private final RowIndex traces;

  Trial(RowIndex traces) {
    this.traces = traces;
  }

  /**
   * The night of those bodies, had the corrections been there. Test weights and charges are left
   * out: they say nothing of a balance.
   */
  Night with(Collection<String> bodies, List<Correction> corrections) {
    var places = new TreeSet<Place>();
    var named = new HashSet<String>(bodies);
    var all = traces.night().ledger().weighings();
    Stream.concat(bodies.stream().map(all::of), batches(bodies).stream().map(all::ofBatch))
        .flatMap(List::stream)
        .filter(weighing -> weighing.step().movesMass())
        .forEach(
            weighing -> {
              places.add(weighing.place());
              named.add(weighing.body());
            });
    traces.night().ledger().setAside().stream()
        .filter(aside -> aside.bodies().stream().anyMatch(bodies::contains))
        .map(SetAside::notice)
        .forEach(notice -> places.add(notice.place()));
    return new Reckoner(shop(named, corrections), files(places)).at(traces.night().asOf());
  }

  private Set<String> batches(Collection<String> bodies) {
    var batches = new HashSet<String>();
    for (String body : bodies) {
      traces.facts(body).balance().batches().stream()
          .map(BatchBalance::batch)
          .forEach(batch -> batches.add(batch.id()));
    }
    return batches;
  }

  private Shop shop(Set<String> named, List<Correction> corrections) {
    var shop = traces.night().shop();
    var bodies = new TreeMap<String, Body>(ByteOrder.IDS);
    shop.bodies()
        .forEach(
            (id, body) -> {
              if (named.contains(id)) {
                bodies.put(id, body);
              }
            });
    var all = new ArrayList<>(shop.corrections());
    all.addAll(corrections);
    return new Shop(
        shop.settings(),
        shop.cuts(),
        shop.ranges(),
        shop.foods(),
        shop.customers(),
        bodies,
        shop.codes(),
        shop.scales(),
        shop.bench(),
        List.of(),
        List.of(),
        shop.batches(),
        List.of(),
        all,
        shop.releases());
  }

  private List<ExportFile> files(Set<Place> places) {
    var files = new TreeMap<String, List<ExportRow>>(ByteOrder.IDS);
    for (var place : places) {
      files.computeIfAbsent(place.file(), f -> new ArrayList<>()).add(traces.row(place));
    }
    return files.entrySet().stream().map(e -> new ExportFile(e.getKey(), e.getValue())).toList();
  }
}
