package gambrel.balance;

import java.util.function.Function;

/**
 * A figure that many ask for: kept with a subject that keeps figures, else computed each time.
 *
 * @param <S> what it is drawn from, which never changes
 * @param <T> the figure, which never changes
 */
public final class Drawn<S, T> {
  private final Function<S, T> how;

  /** A figure drawn by {@code how}, which must give the same each time and never null. */
  public Drawn(Function<S, T> how) {
    this.how = how;
  }

  /** Something from which figures are drawn. */
  public interface Subject {
    /** Those drawn so far. */
    Drawings drawings();
  }

  /** The figure of {@code subject}. Two threads may both draw it the first time. */
  public T of(S subject) {
    return subject instanceof Subject keeper
        ? keeper.drawings().of(this, () -> how.apply(subject))
        : how.apply(subject);
  }
}
