/**
 * How often the crew comes, for what, and what each time costs. Start with {@link
 * yardloom.work.visit.SiteVisitCalculator}.
 */
package yardloom.work.visit;
