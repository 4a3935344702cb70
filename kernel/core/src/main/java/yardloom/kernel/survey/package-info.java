/**
 * Measuring a lot: tapes and ties, deed calls, traverses and curves.
 *
 * <p>Azimuths run clockwise from north; a latitude is the northward and a departure the eastward
 * part of a course. Everything works in metres on the local plane, north up; a deed in another
 * north is turned before its points reach the plan. Measurements that contradict each other are
 * reported, never silently reconciled. None of it replaces a licensed survey. Start with {@link
 * yardloom.kernel.survey.Deed} for a description in words and {@link
 * yardloom.kernel.survey.TapeFix} for tapes.
 */
package yardloom.kernel.survey;
