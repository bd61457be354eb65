package gambrel.wording;

import gambrel.register.Figures;
import gambrel.register.Planned;
import gambrel.register.RegisterRow;
import gambrel.statement.ChangesView;
import java.util.List;
import java.util.Optional;

/** What a revision replaces, and what is different. */
final class ChangesPart {

  private ChangesPart() {}

  /** Empty for a first statement. */
  static Optional<ChangesView> of(
      Subject subject, Planned planned, Optional<List<Figures.Change>> changes) {
    return planned.replaces().map(row -> view(subject, planned, row, changes));
  }

  private static ChangesView view(
      Subject subject,
      Planned planned,
      RegisterRow replaced,
      Optional<List<Figures.Change>> changes) {
    var formats = subject.formats();
    var wording = subject.wording();
    String sentence =
        wording.say(
            "changes.sentence",
            formats.count(planned.revision()),
            formats.count(replaced.revision()),
            formats.date(replaced.issued().toLocalDate()));
    if (changes.isEmpty()) {
      return new ChangesView(sentence + " " + wording.say("changes.unknown"), List.of());
    }
    return changes.get().isEmpty()
        ? new ChangesView(sentence + " " + wording.say("changes.none"), List.of())
        : new ChangesView(sentence, new ChangeRows(subject).of(changes.get()));
  }
}
