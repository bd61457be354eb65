package gambrel.run;

import gambrel.shop.Settings;
import java.nio.file.Path;

/** Temporary. */
public final class PdfDocuments {
  /** Temporary. */
  public static Documents of(Path shop, Settings settings) {
    throw new UnsupportedOperationException();
  }
}
