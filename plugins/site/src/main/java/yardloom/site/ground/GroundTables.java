package yardloom.site.ground;

import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.ground.LevelBed;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.ground.Swale;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.site.ground.EarthWords.Earth;

/** Tables of earth to move. */
public final class GroundTables {
  private static final Source SURFACE =
      Source.computed(
          "Linear interpolation over triangles", "XMS wiki", 0, "plane through three points");

  private GroundTables() {}

  public static Table levelBeds(Plan plan) {
    Table.Builder table =
        Table.titled("level-beds", "Earth to level each bed")
            .column(Column.text("bed", "bed"))
            .column(Column.of("level", "level with cut = fill", Measure.LENGTH))
            .column(Column.of("cut", "cut and fill, each", Measure.VOLUME))
            .column(Column.of("unknown", "area without levels", Measure.AREA));
    Optional<Surface> surface = plan.attributes().get(Surface.KEY);
    if (surface.isPresent()) {
      for (Element.Bed bed : plan.all(Element.Bed.class)) {
        if (bed.shape().overlaps(surface.get().extent())) {
          Length level = LevelBed.balanced(surface.get(), bed.shape());
          LevelBed moved = LevelBed.of(surface.get(), bed.shape(), level);
          table.row(
              Cell.text(bed.id().name()),
              Cell.of(level),
              Cell.of(
                  Derived.by("Σ area × (ground − level) at the centroid", SURFACE)
                      .from("level", level)
                      .gives(moved.cut())),
              Cell.of(moved.unknown()));
        }
      }
    }
    return table.note("Volumes in place, without swelling or settling.").build();
  }

  public static Table swales(Plan plan) {
    Table.Builder table =
        Table.titled("swales", "Swales")
            .column(Column.text("swale", "swale"))
            .column(Column.of("length", "length", Measure.LENGTH))
            .column(Column.of("top", "top width", Measure.LENGTH))
            .column(Column.of("depth", "depth", Measure.DEPTH))
            .column(Column.of("volume", "earth to dig", Measure.VOLUME))
            .column(Column.of("holds", "holds when level", Measure.WATER));
    for (Element.Structure structure : plan.all(Element.Structure.class)) {
      structure
          .attributes()
          .get(LevelWords.SwaleLine.KEY)
          .ifPresent(
              s -> {
                Swale swale = s.swale();
                var volume = earthOf(structure, s);
                table.row(
                    Cell.text(structure.id().name()),
                    Cell.of(s.line().length()),
                    Cell.of(swale.top()),
                    Cell.of(swale.depth()),
                    Cell.of(volume),
                    Cell.of(volume));
              });
    }
    return table.build();
  }

  /** The banks that are made of the earth of swales. */
  public static Table berms(Plan plan) {
    Table.Builder table =
        Table.titled("berms", "Banks of swales")
            .column(Column.text("bank", "bank"))
            .column(Column.text("swale", "of the swale"))
            .column(Column.of("length", "length", Measure.LENGTH))
            .column(Column.of("foot", "width at the foot", Measure.LENGTH))
            .column(Column.of("height", "height", Measure.DEPTH))
            .column(Column.of("volume", "earth to lay", Measure.VOLUME));
    boolean any = false;
    for (Element.Structure structure : plan.all(Element.Structure.class)) {
      Optional<Berm> berm = structure.attributes().get(Berm.KEY);
      if (berm.isPresent()) {
        any = true;
        table.row(
            Cell.text(structure.id().name()),
            Cell.text(berm.get().of().name()),
            Cell.of(berm.get().line().length()),
            Cell.of(berm.get().width()),
            Cell.of(berm.get().height()),
            Cell.of(earthOf(structure, berm.get())));
      }
    }
    return any
        ? table.note("As high as the swale's earth makes it, without swelling or settling.").build()
        : table.build();
  }

  /** The earth that a bank takes: all that its swale gives. */
  static Derived<Volume> earthOf(Element.Structure structure, Berm berm) {
    return Derived.by(
            "section of the swale × length",
            Source.commonPractice("the earth of a swale makes its bank"))
        .from("section of the swale", berm.swale().section(), structure.place())
        .from("length", berm.line().length(), structure.place())
        .gives(berm.swale().volume(berm.line().length()));
  }

  /** The earth that a swale takes. */
  static Derived<Volume> earthOf(Element.Structure structure, LevelWords.SwaleLine s) {
    Swale swale = s.swale();
    return Derived.by(
            "(bottom + sides × depth) × depth × length",
            Source.commonPractice("volume of a trapezoid ditch"))
        .from("bottom", swale.bottom(), structure.place())
        .from("depth", swale.depth(), structure.place())
        .from("sides", swale.sides(), structure.place())
        .from("length", s.line().length(), structure.place())
        .gives(swale.volume(s.line().length()));
  }

  public static Table earth(Plan plan) {
    Table.Builder table =
        Table.titled("earth", "Earth to move")
            .column(Column.text("where", "where"))
            .column(Column.of("cut", "cut", Measure.VOLUME))
            .column(Column.of("fill", "fill", Measure.VOLUME));
    for (Attributes.Entry<Earth> earth : plan.attributes().all(Earth.KEY)) {
      table.row(
          Cell.text(earth.value().name()),
          Cell.of(earth.value().cut()),
          Cell.of(earth.value().fill()));
    }
    return table.note("Volumes in place, without swelling or settling.").build();
  }
}
