package yardloom.kernel.draw;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.table.Table;

/** One block of a sheet. */
public sealed interface Panel
    permits Panel.SitePlan,
        Panel.Enlarged,
        Panel.Before,
        Panel.Figure,
        Panel.TableBlock,
        Panel.Notes,
        Panel.SheetIndex {

  /**
   * The site at the sheet's true scale.
   *
   * @param base what is shown whatever the layers are called
   * @param layers further layers by id
   */
  record SitePlan(Base base, Set<String> layers) implements Panel {
    /** Which layers a sheet starts from. */
    public enum Base {
      /** Those that are on unless told otherwise. */
      SHOWN,
      /** The yard by which anybody finds their way. */
      YARD,
      /** Nothing but the layers that are named. */
      NAMED
    }

    public SitePlan {
      layers = Set.copyOf(layers);
    }

    /** All layers that are on. */
    public static SitePlan shown() {
      return new SitePlan(Base.SHOWN, Set.of());
    }

    /** The yard and more layers, for a sheet of its own subject. */
    public static SitePlan yardWith(Set<String> more) {
      return new SitePlan(Base.YARD, more);
    }

    /** These layers and nothing else, such as a picture of the grown yard. */
    public static SitePlan only(Set<String> layers) {
      return new SitePlan(Base.NAMED, layers);
    }
  }

  /**
   * A part of the site with the yard and more layers, at the largest true scale that the sheet has
   * room for. A sheet has one at most.
   *
   * @param layers ids of the layers beside the yard
   * @param window what must be seen; empty for all that {@code layers} show, or nothing at all
   *     where they show nothing
   */
  record Enlarged(String title, Set<String> layers, Optional<Shape> window) implements Panel {
    public Enlarged {
      layers = Set.copyOf(layers);
    }

    /** The part where {@code layers} have something to show. */
    public Enlarged(String title, Set<String> layers) {
      this(title, layers, Optional.empty());
    }
  }

  /**
   * The ground of the site plan as it was, beside it at the same scale: left of it, or above where
   * the lot is wider than deep. A sheet has one at most.
   *
   * @param title over the earlier view
   * @param titleAfter over the site plan itself
   * @param layers ids of all that the earlier view shows
   */
  record Before(String title, String titleAfter, Set<String> layers) implements Panel {
    public Before {
      layers = Set.copyOf(layers);
    }
  }

  /**
   * A figure of its own, in its own metres.
   *
   * @param minWidthMm the least width on paper at which it can be read
   * @param scaleDenominator true scale as in 1:n, or 0 to fit the space
   */
  record Figure(
      String title,
      List<Mark> marks,
      List<LegendEntry> legend,
      double minWidthMm,
      double scaleDenominator)
      implements Panel {}

  /**
   * A table.
   *
   * @param ifRoom whether it is left out where the sheet's pages are full
   */
  record TableBlock(Table table, boolean ifRoom) implements Panel {
    /** A table that stands there, unless its maker says otherwise. */
    public TableBlock(Table table) {
      this(table, false);
    }
  }

  /** The list of all sheets of the set, filled in when they are numbered. */
  record SheetIndex() implements Panel {}

  /** Paragraphs of text under a heading. */
  record Notes(String title, List<String> paragraphs) implements Panel {}
}
