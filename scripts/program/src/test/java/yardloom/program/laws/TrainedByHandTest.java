package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.study.DrawnLayer;

/** A trained tree is drawn as it stands: flat along its wires, a pyramid round. */
class TrainedByHandTest {
  private static final String YARD =
      """
      plan 'Trained by hand', units: 'us'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 40.ft), point(0.ft, 40.ft)])
      tree('flat', point(20.ft, 20.ft), crown: 12.ft, height: 8.ft, standing: false) { species 'apple (dwarf)'; trained 'espalier', width: 9.ft%s }
      tree('round', point(45.ft, 20.ft), crown: 7.ft, height: 8.ft, standing: false) { species 'European pear'; trained 'dwarf pyramid', width: 5.ft }
      """;

  private static DrawnLayer trees(Drawn drawn) {
    return drawn.outcome().layers().entrySet().stream()
        .filter(e -> e.getKey().id().equals("site.tree"))
        .findFirst()
        .orElseThrow()
        .getValue();
  }

  /**
   * 9 ft by 2: east to west where nothing is said, north to south at 0°; at 30° each side of the
   * box is 9 sin 30° + 2 cos 30° = 6.232 and 9 cos 30° + 2 sin 30° = 8.794 ft.
   */
  @ParameterizedTest(name = "{0}: {1} × {2} ft")
  @CsvSource({"'', 9, 2", "', bearing: 0.deg', 2, 9", "', bearing: 30.deg', 6.232, 8.794"})
  void espalier_isFlatAlongItsWires(String bearing, double east, double north) {
    Drawn drawn = Drawn.of(YARD.formatted(bearing));
    List<Mark.Region> flat =
        trees(drawn).marks().stream()
            .filter(Mark.Region.class::isInstance)
            .map(Mark.Region.class::cast)
            .toList();
    assertEquals(1, flat.size());
    var box = flat.get(0).shape().jts().getEnvelopeInternal();
    assertEquals(east, box.getWidth() / 0.3048, 1e-3);
    assertEquals(north, box.getHeight() / 0.3048, 1e-3);
    assertEquals(20, box.centre().x / 0.3048, 1e-3);
    assertEquals(18, flat.get(0).shape().area().squareFeet(), 1e-3);
  }

  @Test
  void pyramid_staysRound_andTheLegendHasBoth() {
    DrawnLayer trees = trees(Drawn.of(YARD.formatted("")));
    assertEquals(1, trees.marks().stream().filter(Mark.Symbol.class::isInstance).count());
    List<String> said = trees.legend().stream().map(e -> e.text()).toList();
    assertEquals(2, said.size(), said.toString());
    assertTrue(said.stream().anyMatch(t -> t.startsWith("Tree trained flat")), said.toString());
  }
}
