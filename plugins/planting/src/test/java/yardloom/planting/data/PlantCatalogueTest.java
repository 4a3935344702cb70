package yardloom.planting.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.source.Source.Standing;
import yardloom.planting.model.Plant;
import yardloom.planting.model.SizeRange;

class PlantCatalogueTest {
  private final PlantCatalogue catalogue = PlantCatalogue.shipped();

  @ParameterizedTest
  @CsvFileSource(resources = "kc.csv", numLinesToSkip = 1)
  void coefficients_areThoseOfFao56(
      String id, String plant, double initial, double middle, double end) {
    Plant.CropCoefficients kc = catalogue.plant(plant).kc();
    assertEquals(initial, kc.initial(), id);
    assertEquals(middle, kc.middle(), id);
    assertEquals(end, kc.end(), id);
    assertEquals(Standing.READ, kc.source().standing(), id);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "spacings.csv", numLinesToSkip = 1)
  void spacings_areThoseOfExtensionSheets(
      String id, String plant, String measure, double lowFt, double highFt) {
    Plant found = catalogue.plant(plant);
    SizeRange range = measure.equals("rows") ? found.rows() : found.inRow();
    assertEquals(lowFt, range.low().feet(), 1e-9, id);
    assertEquals(highFt, range.high().feet(), 1e-9, id);
    assertEquals(Standing.READ, range.source().standing(), id);
  }

  @Test
  void coefficientsBorrowedFromAnotherCrop_areSaidToBeUnverified() {
    Plant pawpaw = catalogue.plant("pawpaw");
    assertFalse(pawpaw.kc().borrowedFrom().isEmpty());
    assertTrue(pawpaw.unverified().contains("crop coefficient"));
    assertFalse(catalogue.plant("tomato").unverified().contains("crop coefficient"));
  }

  @Test
  void rhubarb_warnsOfItsLeaves_fromAReadSource() {
    Plant rhubarb = catalogue.plant("Rhubarb");
    assertTrue(rhubarb.harmful());
    assertTrue(rhubarb.caution().startsWith("LEAVES TOXIC"));
    assertEquals(Standing.READ, rhubarb.cautionSource().standing());
  }
}
