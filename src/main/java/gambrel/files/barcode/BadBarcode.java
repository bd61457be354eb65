package gambrel.files.barcode;

/** A barcode that cannot be read; the message ends a sentence that begins with the barcode. */
public final class BadBarcode extends Exception {
  private static final long serialVersionUID = 1L;

  BadBarcode(String why) {
    super(why, null, false, false);
  }
}
