package yardloom.water.need.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Unit;

class EffectiveRainTest {
  private static final OutsideRows CROPWAT = OutsideRows.of(EffectiveRainTest.class, "cropwat.csv");
  private static final OutsideRows STEPPED = OutsideRows.of(EffectiveRainTest.class, "stepped.csv");
  private static final OutsideRows TR21 = OutsideRows.of(EffectiveRainTest.class, "tr21.csv");

  @ParameterizedTest
  @CsvFileSource(resources = "cropwat.csv", numLinesToSkip = 1)
  void cropwat_ofMonthlyRain_isThePublishedForm(String id, double rainMm, double effectiveMm) {
    CROPWAT.check(id, effectiveMm, CropwatRain.effectiveMm(rainMm), 0.01);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "stepped.csv", numLinesToSkip = 1)
  void steppedMethods_ofRain_giveThePublishedValue(
      String id, String method, double rain, String unit, double expected, double tolerance) {
    Unit of = Unit.byWord(unit).orElseThrow();
    STEPPED.check(id, expected, effective(method, Length.metres(of.toSi(rain))).in(of), tolerance);
  }

  private static Length effective(String method, Length rain) {
    return switch (method) {
      case "usbr" -> UsbrRain.effective(rain);
      case "dependable" -> DependableRain.effective(rain);
      case "cropwat" -> Length.millimetres(CropwatRain.effectiveMm(rain.millimetres()));
      case "tr21" -> Tr21Rain.effective(rain, Length.inches(6), Length.inches(3));
      default -> throw new IllegalArgumentException(method);
    };
  }

  @ParameterizedTest
  @CsvFileSource(resources = "tr21.csv", numLinesToSkip = 1)
  void tr21_ofMonthlyRain_isThatOfStateCu(
      String id, double rainIn, double cropIn, double refillIn, double expected) {
    Length found =
        Tr21Rain.effective(Length.inches(rainIn), Length.inches(cropIn), Length.inches(refillIn));
    TR21.check(id, expected, found.inches(), 0.001);
  }

  /** P-04, StateCU xcrain. */
  @ParameterizedTest
  @CsvSource({"1, 0.7730", "1.5, 0.8575", "2, 0.9217", "3, 1.0007", "4, 1.0327"})
  void tr21StorageFactor_byRefill(double inches, double expected) {
    assertEquals(expected, Tr21Rain.storageFactor(Length.inches(inches)), 1e-4);
  }

  /** Below 0.11 in the formula turns negative; the clamp gives nothing, as for no crop use. */
  @ParameterizedTest
  @CsvSource({"0.10, 4", "0, 4", "3, 0"})
  void tr21_ofTooLittle_isNothing(double rainIn, double cropIn) {
    Length found =
        Tr21Rain.effective(Length.inches(rainIn), Length.inches(cropIn), Length.inches(3));
    assertEquals(0, found.metres());
  }

  @Property(seed = "20261125")
  void everyMethod_liesBetweenZeroAndRain_andNeverFalls(
      @ForAll @DoubleRange(min = 0, max = 500) double rainMm,
      @ForAll @DoubleRange(min = 0, max = 50) double moreMm) {
    for (String method : new String[] {"usbr", "dependable", "cropwat", "tr21"}) {
      Length less = effective(method, Length.millimetres(rainMm));
      Length more = effective(method, Length.millimetres(rainMm + moreMm));
      assertTrue(less.metres() >= 0 && less.millimetres() <= rainMm + 1e-9, method);
      assertTrue(more.metres() >= less.metres() - 1e-12, method);
    }
  }
}
