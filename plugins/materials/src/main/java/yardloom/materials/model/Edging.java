package yardloom.materials.model;

import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;

/**
 * An edging about a bed.
 *
 * @param what such as {@code steel strip}
 * @param piece the length of one piece
 */
public record Edging(String what, Length piece, SourceRef place) {}
