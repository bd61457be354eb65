package gambrel.files.publish;

import java.io.IOException;

/** Another run has the output folder open. */
public final class OutputBusyException extends IOException {
  private static final long serialVersionUID = 1L;
}
