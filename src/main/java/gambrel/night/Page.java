package gambrel.night;

import gambrel.pages.render.template.TemplateProblem;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A page as it was made.
 *
 * @param bytes the document; empty if a template cannot be used
 * @param problem the problem of the template; empty if there is a document
 */
record Page(Optional<byte[]> bytes, Optional<TemplateProblem> problem) {
  /** Makes a page. */
  static Page of(Supplier<byte[]> maker) {
    try {
      return new Page(Optional.of(maker.get()), Optional.empty());
    } catch (TemplateProblem problem) {
      return new Page(Optional.empty(), Optional.of(problem));
    }
  }

  /** Writes the page; if there is no document, adds a notice that says why. */
  void write(String path, PageCache cache, List<Notice> notices) throws IOException {
    if (bytes.isPresent()) {
      cache.write(path, bytes.get());
    }
    notice("PAGE").ifPresent(notice -> notices.add(notice.with("page", path)));
  }

  /** Why there is no document; empty if there is one. */
  Optional<Notice> notice(String variant) {
    return problem.map(
        why -> Notice.of(NoticeCode.TEMPLATE_BAD, variant, Place.NONE).with("why", phrase(why)));
  }

  /** The words of a template's problem, with its place if that is known. */
  static Phrase phrase(TemplateProblem problem) {
    var what = Phrase.of("TEMPLATE." + problem.fault());
    for (var value : problem.values().entrySet()) {
      what = what.with(value.getKey(), value.getValue());
    }
    return Phrase.of(problem.line() > 0 ? "TEMPLATE.PLACE" : "TEMPLATE.FILE")
        .with("template", problem.template())
        .with("line", problem.line())
        .with("column", problem.column())
        .with("what", what);
  }
}
