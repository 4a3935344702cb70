package yardloom.kernel.fact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

class AppendixTest {
  private static final Source GEOMETRY = Source.commonPractice("geometry");

  private static Derived<Area> area() {
    return Derived.by("length × width", GEOMETRY)
        .from("length", Length.metres(3), new SourceRef("a.groovy", 2, 1))
        .from("width", Length.metres(2))
        .gives(Area.squareMetres(6));
  }

  private static Derived<Volume> volume(double depthM) {
    return Derived.by("area × depth", GEOMETRY)
        .from("area", area())
        .from("depth", Length.metres(depthM))
        .gives(Volume.cubicMetres(6 * depthM));
  }

  @Test
  void add_chain_writesInputsFirstAndSharedOnesOnce() {
    Appendix appendix = new Appendix(Object::toString);
    assertEquals(2, appendix.add("mulch", volume(0.5)));
    assertEquals(3, appendix.add("compost", volume(0.25)));
    assertEquals(2, appendix.add("mulch again", volume(0.5)));
    assertEquals(
        List.of("area", "mulch", "compost"),
        appendix.entries().stream().map(Appendix.Entry::name).toList());
    assertEquals(
        List.of("area = 6.0 m² [1]", "depth = 0.25 m"), appendix.entries().get(2).inputs());
    assertEquals(
        List.of("length = 3.0 m (a.groovy:2:1)", "width = 2.0 m"),
        appendix.entries().get(0).inputs());
  }

  @Test
  void sources_areListedOnce() {
    Appendix appendix = new Appendix(Object::toString);
    appendix.add("mulch", volume(0.5));
    assertEquals(List.of("geometry (common practice, no source)"), appendix.sources());
    assertEquals(1, appendix.entries().get(1).source());
  }
}
