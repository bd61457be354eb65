package gambrel.weighing;

import gambrel.cuts.Species;
import gambrel.measure.WeightUnit;
import gambrel.notice.NoticeCode;
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
          NoticeCode.ROW_BROKEN, "The row cannot be used: " + row.broken().get() + ".");
    }
    if (read.status() instanceof Status.Unknown unknown) {
      throw new Refusal(
          NoticeCode.STATUS_BAD, "The status \"" + unknown.text() + "\" is not understood.");
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
        NoticeCode.TIME_BAD, "\"" + row.get(Field.TIME) + "\" is no time like 2026-07-31T14:05.");
  }

  private WeightUnit unit(ExportRow row) throws Refusal {
    return rows.unit(row)
        .orElseThrow(
            () ->
                new Refusal(
                    NoticeCode.UNIT_BAD,
                    "The unit \"" + row.get(Field.UNIT) + "\" is not understood."));
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
          NoticeCode.NUMBER_BAD, "\"" + text + "\" in column pieces is no whole number.");
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
      throw new Refusal(NoticeCode.ITEM_NOT_IN_SPECIES, misfit(code, body));
    }
  }

  private boolean has(Species species, ScaleCode code) {
    return shop.cuts().of(species).find(code.item()).isPresent();
  }

  private String misfit(ScaleCode code, Optional<Body> body) {
    String others =
        Stream.of(Species.values())
            .filter(species -> has(species, code))
            .map(Species::id)
            .collect(Collectors.joining(", "));
    String item = "Item " + code.item() + " of code " + code.pattern() + " is no part of ";
    return item
        + body.map(b -> b.species().id() + ", which body " + b.id() + " is").orElse("any species")
        + (others.isEmpty() || body.isEmpty() ? "" : "; it is of " + others)
        + ".";
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
          NoticeCode.OWNER_MISSING,
          "A weighing of step " + step.id() + " needs " + need(step) + ", and has none.");
    }
  }

  private static String need(Step step) {
    return switch (step) {
      case PACK, TUB -> "a body or a batch";
      case ADDED -> "a batch";
      default -> "a body";
    };
  }
}
