package gambrel.pages.render;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** An independent judge of PDF files: veraPDF, the reference validator of the PDF Association. */
public final class Validator {
  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private Validator() {}

  /**
   * What a file breaks of PDF/A-3a (ISO 19005-3) and PDF/UA-1 (ISO 14289-1), so far as machines can
   * tell.
   */
  public static List<String> faults(byte[] pdf) {
    return List.of(PDFAFlavour.PDFA_3_A, PDFAFlavour.PDFUA_1).stream()
        .flatMap(flavour -> faults(pdf, flavour).stream())
        .toList();
  }

  private static List<String> faults(byte[] pdf, PDFAFlavour flavour) {
    try (var parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
        var validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      return validator.validate(parser).getTestAssertions().stream()
          .map(fault -> flavour + " " + fault.getRuleId().getClause() + ": " + fault.getMessage())
          .distinct()
          .toList();
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }
}
