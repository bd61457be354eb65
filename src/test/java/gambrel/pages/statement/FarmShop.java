package gambrel.pages.statement;

import gambrel.insight.usual.LikeBodies;
import gambrel.night.Inputs;
import gambrel.night.RefusedException;
import gambrel.pages.views.Answer;
import gambrel.pages.views.StatementView;
import gambrel.pages.words.WordFiles;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.shop.Shop;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A shop folder of a few lines: rail to 0.5 kg, bench to 0.02 kg, in UTC. Everything happens in
 * March 2026; statements are as of the 20th.
 */
public final class FarmShop {
  static final Path TEMPLATES = Path.of("templates");

  private final Path folder;
  private final Map<String, List<String>> files = new LinkedHashMap<>();
  private OffsetDateTime asOf = OffsetDateTime.parse("2026-03-20T02:00:00Z");
  private int ticket;
  private UnaryOperator<Shop> change = UnaryOperator.identity();

  public FarmShop(Path folder) {
    this.folder = folder;
    add(
        "shop.properties",
        """
        name=Fold End Boning Room
        address=Fold End; Hollow Lane
        contact=555 0100
        currency=AUD
        locale=en-AU
        unit=kg
        zone=UTC
        tax_name=GST""");
    add(
        "customers.csv",
        "customer,name,language,address\nc-ann,Ann Lowry,,Lowry Road 1; Hilltop\nc-bob,Bob Teasel,,");
    add(
        "bodies.csv",
        "body,species,class,killed,live_weight,live_guessed,age_months,customer,head,mark"
            + ",outcome,note");
    add("shares.csv", "body,customer,share");
    add("corrections.csv", "scale,ticket,date,field,value,by,on,reason");
    add("releases.csv", "body,by,on,reason,action");
    add("scales.csv", "scale,division\nrail,0.5\nbench,0.02");
    add("batches.csv", "batch,product,due,added");
    add("payments.csv", "customer,body,date,amount");
    add("charges.csv", "charge,description,basis,price,tax_percent,free,minimum,item");
    add("codes.csv", "code,item,step");
    for (var code :
        List.of(
            "hot carcase hot",
            "cold carcase cold",
            "aged carcase aged",
            "block hindquarter block",
            "rump rump-steak pack",
            "mince mince pack",
            "sausages sausages pack",
            "dog dog-bones pack",
            "liver liver pack",
            "trim trim tub",
            "bone bone bin",
            "fat fat bin",
            "waste waste bin",
            "water  added")) {
      add("codes.csv", code.replace(' ', ','));
    }
    add("exports/day.csv", "scale,ticket,time,body,code,net,batch,customer");
  }

  /** Another region, and its money in place of Australian dollars. */
  FarmShop in(String region, String currency) {
    files.get("shop.properties").replaceAll(s -> s.replace("=AUD", "=" + currency));
    return add("shop.properties", "region=" + region);
  }

  public FarmShop add(String file, String lines) {
    files.computeIfAbsent(file, f -> new ArrayList<>()).addAll(lines.lines().toList());
    return this;
  }

  /** Changes the shop after it was read. */
  FarmShop changed(UnaryOperator<Shop> how) {
    change = how;
    return this;
  }

  FarmShop at(String moment) {
    asOf = OffsetDateTime.parse(moment);
    return this;
  }

  /** A weighing with the next ticket: day and time in March, body, code, net, batch, customer. */
  public FarmShop row(String dayTime, String body, String code, String net, String... rest) {
    ticket++;
    String scale = List.of("hot", "cold", "aged").contains(code) ? "rail" : "bench";
    var cells =
        new ArrayList<>(List.of(scale, "" + ticket, "2026-03-" + dayTime + ":00", body, code, net));
    cells.addAll(List.of(rest));
    return add("exports/day.csv", String.join(",", cells));
  }

  /**
   * Ann's steer B1: 100 hot, 98 cold, 60 mince, 10 rump, 6 dog bones, 15 bone, 5 fat; 2 are lost.
   */
  FarmShop steer() {
    add("bodies.csv", "B1,beef,steer,2026-03-02,180,,20,c-ann,1,Blue 7,,");
    return weighed("B1");
  }

  FarmShop weighed(String body) {
    row("02T09:00", body, "hot", "100");
    row("03T09:00", body, "cold", "98");
    row("05T09:00", body, "rump", "10");
    row("05T09:01", body, "mince", "30");
    row("05T09:02", body, "mince", "30");
    row("05T09:03", body, "dog", "6");
    row("05T09:04", body, "bone", "15");
    return row("05T09:05", body, "fat", "5");
  }

  public Night night() {
    files.forEach(this::write);
    try {
      var inputs = Inputs.read(folder, Progress.NONE);
      return new Reckoner(change.apply(inputs.shop()), inputs.exports()).at(asOf);
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
  }

  Planned planned(String body, String customer, Optional<RegisterRow> replaces) {
    var night = night();
    var account = night.bodies().get(body);
    return new Planned(customer, account, replaces, false);
  }

  StatementView statement(String body, String customer) {
    return statement(planned(body, customer, Optional.empty()), Optional.of(List.of()));
  }

  StatementView statement(Planned planned, Optional<List<Figures.Change>> changes) {
    var night = night();
    String language = night.shop().customer(planned.customer()).language();
    return StatementComposer.compose(
        night,
        planned,
        LikeBodies.of(night).compare(planned.body()),
        changes,
        words(night).of(language));
  }

  private static WordFiles words(Night night) {
    return new WordFiles(FarmShop::file, FarmShop::file, night.shop().settings());
  }

  public static Optional<String> file(String name) {
    var file = TEMPLATES.resolve(name);
    try {
      return Files.exists(file) ? Optional.of(Files.readString(file)) : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void write(String file, List<String> lines) {
    try {
      Files.createDirectories(folder.resolve(file).getParent());
      Files.writeString(folder.resolve(file), String.join("\n", lines) + "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Lead and lines of the answer to a question, with plain spaces; empty where it is not asked. */
  static List<String> answer(StatementView view, String key) {
    return view.answers().stream()
        .filter(answer -> answer.key().equals(key))
        .flatMap(FarmShop::sentences)
        .map(FarmShop::plain)
        .toList();
  }

  private static Stream<String> sentences(Answer answer) {
    return Stream.concat(Stream.of(answer.lead()), answer.lines().stream());
  }

  static String plain(String text) {
    return text.replace('\u00a0', ' ').replace('\u2212', '-');
  }
}
