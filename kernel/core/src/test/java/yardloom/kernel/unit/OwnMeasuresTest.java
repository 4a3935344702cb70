package yardloom.kernel.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sentences as notes and findings have them, each read on either side. */
class OwnMeasuresTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a stake every 3 ft (0.9 m) of dripline|a stake every 3 ft of dripline|a stake every 0.9 m"
            + " of dripline",
        "Use 3 to 4 in (8 to 10 cm) on drained soil, 2 to 3 in (5 to 8 cm) on heavy soil.|Use 3 to"
            + " 4 in on drained soil, 2 to 3 in on heavy soil.|Use 8 to 10 cm on drained soil, 5 to"
            + " 8 cm on heavy soil.",
        "keep a place of 4 by 4 ft (1.2 by 1.2 m)|keep a place of 4 by 4 ft|keep a place of 1.2 by"
            + " 1.2 m",
        "is 2 in to 330 ft (5 cm to 100 m) long|is 2 in to 330 ft long|is 5 cm to 100 m long",
        "after 1/2 in (13 mm) of rain|after 1/2 in of rain|after 13 mm of rain",
        "a rain of half an inch (13 mm) or more|a rain of half an inch or more|a rain of 13 mm or"
            + " more",
        "mown at 10 cm (4 in)|mown at 4 in|mown at 10 cm",
        "two people above 50 lb (23 kg).|two people above 50 lb.|two people above 23 kg.",
        "at or above 55 °F (13 °C) or more|at or above 55 °F or more|at or above 13 °C or more",
        "200 gph (757 L/h)|200 gph|757 L/h",
        "Scale 1/8\" = 1'-0\" (1:96)|Scale 1/8\" = 1'-0\" (1:96)|Scale 1/8\" = 1'-0\" (1:96)",
        "3 lots (5 m)|3 lots (5 m)|3 lots (5 m)"
      })
  void sentence_saidInBoth_isReadInOne(String both, String us, String metric) {
    assertEquals(us, OwnMeasures.of(both, UnitSystem.US));
    assertEquals(metric, OwnMeasures.of(both, UnitSystem.METRIC));
  }
}
