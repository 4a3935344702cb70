package yardloom.sheet.compose;

import java.util.List;
import java.util.Optional;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;

/** Something that takes a place in the columns of a sheet. */
interface Block {
  /** The least width at which it can be read; it takes as many columns as that needs. */
  double minWidthMm();

  /** Whether it may stand on a later page than what follows it, where it fits whole. */
  default boolean floats() {
    return false;
  }

  /**
   * Sets the block at the top of {@code room}.
   *
   * @param partly whether the rest may go elsewhere
   * @return empty if there is not room enough
   */
  Optional<Placed> place(Box room, boolean partly);

  /** Inks of a block and the height they take; {@code rest} is what found no room. */
  record Placed(List<Ink> inks, double heightMm, Optional<Block> rest) {}
}
