package gambrel.pages.render.template;

import gambrel.pages.render.template.TemplateProblem.Fault;
import java.time.Duration;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Makes each page in a thread of its own, so that an endless page costs a limited time and does not
 * stop the night. After one such page its template is not tried again.
 */
public final class TimeLimit {

  private final Duration limit;
  private final Set<String> tooSlow = ConcurrentHashMap.newKeySet();

  /** A limit for each page. */
  public TimeLimit(Duration limit) {
    this.limit = limit;
  }

  /**
   * The work's result.
   *
   * @throws TemplateProblem if it exceeds the limit, the memory or the stack, or fails, or if the
   *     template exceeded the limit before
   */
  public <T> T within(String template, Callable<T> work) {
    if (tooSlow.contains(template)) {
      throw tooSlow(template, null);
    }
    var task = new FutureTask<>(work);
    var thread = new Thread(task, "page " + template);
    thread.setDaemon(true);
    thread.start();
    try {
      return task.get(limit.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      task.cancel(true);
      tooSlow.add(template);
      throw tooSlow(template, e);
    } catch (InterruptedException e) {
      task.cancel(true);
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while making a page", e);
    } catch (ExecutionException e) {
      throw failure(template, e.getCause());
    }
  }

  private TemplateProblem tooSlow(String template, TimeoutException e) {
    var seconds = String.valueOf(limit.toSeconds());
    return TemplateProblem.of(template, Fault.TOO_SLOW, Map.of("seconds", seconds), e);
  }

  private static RuntimeException failure(String template, Throwable cause) {
    if (cause instanceof TemplateProblem problem) {
      return problem;
    }
    if (cause instanceof StackOverflowError) {
      return TemplateProblem.of(template, Fault.TOO_DEEP, Map.of(), cause);
    }
    if (cause instanceof OutOfMemoryError) {
      return TemplateProblem.of(template, Fault.MEMORY, Map.of(), cause);
    }
    return TemplateProblem.of(template, Fault.LAYOUT, Map.of("message", cause.toString()), cause);
  }
}
