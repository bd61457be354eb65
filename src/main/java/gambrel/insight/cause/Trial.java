package gambrel.insight.cause;

import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Correction;
import gambrel.trade.shop.Shop;
import gambrel.trade.weighing.Weighing;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reckons a few bodies anew with more corrections, from the rows that concern them. */
record Trial(RowIndex rows) {
  /**
   * The night of some bodies with corrections added to the shop's. Test weights and charges are
   * left out, since no balance depends on them.
   */
  Night with(Set<String> bodies, List<Correction> corrections) {
    var night = rows.night;
    var all = night.ledger().weighings();
    var weighings =
        bodies.stream()
            .flatMap(
                body ->
                    Stream.concat(
                        all.of(body).stream(),
                        rows.facts(body).balance.batches().stream()
                            .flatMap(batch -> all.ofBatch(batch.batch().id()).stream())))
            .filter(weighing -> weighing.step().movesMass())
            .toList();
    var named = new HashSet<>(bodies);
    weighings.forEach(weighing -> named.add(weighing.body()));
    var setAside =
        night.ledger().setAside().stream()
            .filter(aside -> !Collections.disjoint(aside.bodies(), bodies))
            .map(aside -> aside.notice().place());
    var places =
        Stream.concat(weighings.stream().map(Weighing::place), setAside)
            .collect(Collectors.toCollection(TreeSet::new));
    return new Reckoner(shop(night.shop(), named, corrections), files(places)).at(night.asOf());
  }

  private static Shop shop(Shop shop, Set<String> named, List<Correction> corrections) {
    var bodies = new TreeMap<String, Body>(shop.bodies());
    bodies.keySet().retainAll(named);
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
        Groups.both(shop.corrections(), corrections),
        shop.releases(),
        shop.unread());
  }

  private List<ExportFile> files(Set<Place> places) {
    return Groups.inOrder(places.stream().map(rows::row), row -> row.place().file())
        .entrySet()
        .stream()
        .map(file -> new ExportFile(file.getKey(), file.getValue()))
        .toList();
  }
}
