package gambrel.weighing;

import gambrel.cuts.Species;
import gambrel.measure.WeightUnit;
import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Phrase;
import gambrel.notice.Place;
import gambrel.notice.Value;
import gambrel.shop.Body;
import gambrel.shop.ScaleCode;
import gambrel.shop.Shop;
import gambrel.shop.Step;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Turns one row that stands into a weighing, or says why it cannot be one. */
final class Acceptance {
  private final Shop shop;
  private final Directory directory;
  private final Bench bench;
  private final RowReader rows;

  Acceptance(Shop shop, Directory directory, Bench bench, RowReader rows) {
    this.shop = shop;
    this.directory = directory;
    this.bench = bench;
    this.rows = rows;
  }

  Weighing accept(ReadRow read) throws Refusal {
    var row = read.row();
    if (row.broken().isPresent()) {
      throw new Refusal(
          Notice.of(NoticeCode.ROW_BROKEN, row.place()).with("fault", row.broken().get()));
    }
    if (read.status() instanceof Status.Unknown unknown) {
      throw new Refusal(
          Notice.of(NoticeCode.STATUS_BAD, row.place()).with("status", unknown.text()));
    }
    var time = read.time().orElseThrow(() -> badTime(row));
    var scale = directory.scale(row.get(Field.SCALE));
    var filled = bench.fill(row, scale.id(), time);
    var body = directory.body(filled.row().get(Field.BODY), time.toLocalDate());
    var code = directory.code(row.get(Field.CODE));
    String customer = directory.customer(filled.row().get(Field.CUSTOMER));
    String batch = directory.batch(filled.row().get(Field.BATCH));
    checkItem(code, body);
    checkOwner(code.step(), body.isPresent(), !batch.isEmpty());
    var pieces = pieces(row);
    var net = NetWeight.of(row, unit(row), scale, code, pieces, shop.settings().unit());
    return new Weighing(
        row.place(),
        scale,
        row.get(Field.TICKET),
        time,
        body.map(Body::id).orElse(""),
        code,
        net.net(),
        net.shown(),
        net.unit(),
        pieces,
        batch,
        customer,
        filled.boner());
  }

  private static Refusal badTime(ExportRow row) {
    return new Refusal(
        Notice.of(NoticeCode.TIME_BAD, row.place()).with("time", row.get(Field.TIME)));
  }

  private WeightUnit unit(ExportRow row) throws Refusal {
    return rows.unit(row)
        .orElseThrow(
            () ->
                new Refusal(
                    Notice.of(NoticeCode.UNIT_BAD, row.place())
                        .with("unit", row.get(Field.UNIT))));
  }

  private static Optional<Integer> pieces(ExportRow row) throws Refusal {
    String text = row.get(Field.PIECES);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Decimals.of(text).orElseThrow().intValueExact()).filter(n -> n >= 0);
    } catch (ArithmeticException | NoSuchElementException e) {
      throw new Refusal(
          Notice.of(NoticeCode.NUMBER_BAD, "WHOLE", row.place()).with("cell", text));
    }
  }

  /** The item must be the body's species' own; without a body any species will do. */
  private void checkItem(ScaleCode code, Optional<Body> body) throws Refusal {
    if (code.item().isEmpty() || !code.step().movesMass()) {
      return;
    }
    boolean known =
        body.isPresent()
            ? has(body.get().species(), code)
            : Stream.of(Species.values()).anyMatch(species -> has(species, code));
    if (!known) {
      throw new Refusal(misfit(code, body));
    }
  }

  private boolean has(Species species, ScaleCode code) {
    return shop.cuts().of(species).find(code.item()).isPresent();
  }

  private Notice misfit(ScaleCode code, Optional<Body> body) {
    var others =
        Stream.of(Species.values())
            .filter(species -> has(species, code))
            .map(Acceptance::species)
            .toList();
    String variant = body.isEmpty() ? "NO_BODY" : others.isEmpty() ? "NONE" : "OTHERS";
    return Notice.of(NoticeCode.ITEM_NOT_IN_SPECIES, variant, Place.NONE)
        .with("item", code.item())
        .with("code", code.pattern())
        .with("named", body.map(Body::id).orElse(""))
        .with("species", body.<Value>map(b -> species(b.species())).orElse(new Value.Text("")))
        .with("others", new Value.Phrases(others, ", "));
  }

  private static Phrase species(Species species) {
    return Phrase.of("SPECIES." + species);
  }

  private static void checkOwner(Step step, boolean body, boolean batch) throws Refusal {
    boolean owned =
        switch (step) {
          case HOT, COLD, AGED, BLOCK, BIN -> body;
          case PACK, TUB -> body || batch;
          case ADDED -> batch;
          case TEST, OTHER -> true;
        };
    if (!owned) {
      throw new Refusal(
          Notice.of(NoticeCode.OWNER_MISSING, need(step), Place.NONE).with("step", step.id()));
    }
  }

  private static String need(Step step) {
    return switch (step) {
      case PACK, TUB -> "BODY_OR_BATCH";
      case ADDED -> "BATCH";
      default -> "BODY";
    };
  }
}
