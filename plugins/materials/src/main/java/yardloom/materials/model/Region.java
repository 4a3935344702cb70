package yardloom.materials.model;

import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;

/**
 * The place that a regional file speaks for.
 *
 * @param about where it lies and what it has in common, in a sentence
 * @param place where the file says so; every statement of that file is the region's
 */
public record Region(String name, String about, Source source, SourceRef place) {}
