package yardloom.materials.model;

import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;

/**
 * A board frame about a bed.
 *
 * @param size lumber as sold, such as {@code 2x10}
 * @param stock the length in which boards are bought
 * @param kerf width of the saw cut
 * @param courses boards above one another
 */
public record Frame(String size, Length stock, Length kerf, int courses, SourceRef place) {}
