package yardloom.materials.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sheets speak of cardboard and dripline where there are some, and claim no season for trees. */
class LayingNotesTest {
  @ParameterizedTest
  @CsvSource({"true, true", "true, false", "false, true", "false, false"})
  void sentences_nameOnlyWhatIsLaid(boolean cardboard, boolean drip) {
    List<String> all =
        List.of(
            String.join(" ", LayingNotes.steps(cardboard, drip)),
            LayingNotes.order(cardboard, drip));
    for (String text : all) {
      assertEquals(cardboard, text.toLowerCase(java.util.Locale.ROOT).contains("cardboard"), text);
      assertEquals(drip, text.contains("dripline"), text);
      assertTrue(text.contains("the last chips"), text);
    }
    assertTrue(all.get(1).contains("in a later season, through"), all.get(1));
  }
}
