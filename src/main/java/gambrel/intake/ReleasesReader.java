package gambrel.intake;

import gambrel.shop.Release;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code releases.csv}. */
final class ReleasesReader {
  private static final Columns COLUMNS =
      Columns.of("releases.csv", "body", "by", "on", "reason").and("action");

  private ReleasesReader() {}

  /** The releases in file order; without an action a row releases. */
  static List<Release> read(ShopFolder folder, Ids ids) {
    var releases = new ArrayList<Release>();
    folder.each(
        COLUMNS,
        row -> {
          row.needText("body");
          String body = row.known("body", ids.bodies()).orElseThrow();
          row.about(body);
          releases.add(
              new Release(
                  body,
                  row.needText("by"),
                  row.need("on", Formats::moment),
                  row.needText("reason"),
                  row.get("action", Formats.word(Release.Action.class))
                      .orElse(Release.Action.RELEASE),
                  row.place()));
        });
    return releases;
  }
}
