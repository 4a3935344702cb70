/**
 * The kernel's own layers of the site plan, one painter for each concern, in plan metres. Start
 * with {@link yardloom.kernel.paint.KernelPainters}.
 */
package yardloom.kernel.paint;
