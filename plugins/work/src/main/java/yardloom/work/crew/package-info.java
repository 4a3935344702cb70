/**
 * What the crew needs on a page for each phase. Start with {@link yardloom.work.crew.CrewSheets}.
 */
package yardloom.work.crew;
