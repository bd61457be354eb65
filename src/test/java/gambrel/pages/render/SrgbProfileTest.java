package gambrel.pages.render;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.color.ICC_ProfileRGB;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The colour profile against the formulas of IEC 61966-2-1 and the platform's own sRGB. */
class SrgbProfileTest {

  private static ICC_ProfileRGB profile() throws IOException {
    try (var in = SrgbProfileTest.class.getResourceAsStream("/gambrel/icc/srgb.icc")) {
      return (ICC_ProfileRGB) ICC_Profile.getInstance(in.readAllBytes());
    }
  }

  @Test
  void itsCurveIsTheStandardsTransferFunction() throws IOException {
    var curve = profile().getTRC(ICC_ProfileRGB.REDCOMPONENT);
    for (var i = 0; i < curve.length; i++) {
      var v = i / (curve.length - 1.0);
      var linear = v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
      assertEquals(linear, (curve[i] & 0xFFFF) / 65535.0, 1.0 / 65535);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0x000000, 0xFFFFFF, 0xFF0000, 0x00FF00, 0x0000FF, 0x808080, 0x7AA99C})
  void itMeansTheSameColoursAsThePlatforms(int rgb) throws IOException {
    float[] colour = {(rgb >> 16) / 255f, (rgb >> 8 & 255) / 255f, (rgb & 255) / 255f};
    var expected = ColorSpace.getInstance(ColorSpace.CS_sRGB).toCIEXYZ(colour);

    var actual = new ICC_ColorSpace(profile()).toCIEXYZ(colour);

    for (var i = 0; i < expected.length; i++) {
      assertEquals(expected[i], actual[i], 0.002);
    }
  }
}
