package yardloom.kernel.draw;

import java.util.List;
import java.util.Set;
import yardloom.kernel.table.Table;

/** One block of a sheet. */
public sealed interface Panel
    permits Panel.SitePlan,
        Panel.Enlarged,
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
   * The part of the site where layers have something to show, with the yard under them, at the
   * largest true scale that the sheet has room for. A sheet has one at most.
   *
   * @param layers ids; left out where none of them has a mark
   */
  record Enlarged(String title, Set<String> layers) implements Panel {
    public Enlarged {
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
