/** How many hours each task takes. Start with {@link yardloom.work.labour.LabourCalculator}. */
package yardloom.work.labour;
