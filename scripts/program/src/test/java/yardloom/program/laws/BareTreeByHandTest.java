package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** New trees are mulched like all that is planted, or the plan is told that they are not. */
class BareTreeByHandTest {
  private static final String YARD =
      """
      plan 'Trees', units: 'us'
      lot([point(0.ft, 0.ft), point(70.ft, 0.ft), point(70.ft, 60.ft), point(0.ft, 60.ft)])
      bed('herbs', rect(5.ft, 20.ft, 12.ft, 7.ft), use: 'perennial') { plant 'chives' }
      tree('plum', point(11.ft, 23.ft), crown: 9.ft, height: 8.ft, standing: false) { species 'European plum' }
      tree('apple', point(30.ft, 20.ft), crown: 9.ft, height: 8.ft, standing: false) { species 'apple (dwarf)' ; mulchRing 3.ft }
      tree('quince', point(45.ft, 40.ft), crown: 10.ft, height: 9.ft, standing: STANDS) { species 'quince' }
      """;

  private static List<String> said(String yard) {
    return Drawn.of(yard).outcome().findings().stream()
        .filter(f -> f.rule().equals("materials.tree-bare"))
        .map(f -> f.text())
        .toList();
  }

  /** The plum stands in a bed, the apple has a ring; the quince stands in grass. */
  @Test
  void newTreeInGrass_isNamed() {
    assertEquals(
        List.of("Planted in open ground without mulch: quince."),
        said(YARD.replace("STANDS", "false")));
  }

  @Test
  void treeThatStands_isLeftAsItIs() {
    assertEquals(List.of(), said(YARD.replace("STANDS", "true")));
  }

  /** Where nothing is mulched, nobody misses chips at a tree. */
  @Test
  void yardWithoutMulch_saysNothing() {
    String yard = YARD.replace("STANDS", "false").replaceAll("(?m)^bed.*\\n", "");
    assertEquals(
        List.of(),
        said(yard.replace("; mulchRing 3.ft ", "").replaceAll("(?m)^tree\\('plum.*\\n", "")));
  }
}
