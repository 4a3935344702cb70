/**
 * How a lot was measured: tapes with ties, deeds with bearings and curves, and how well they close.
 * Start with {@link yardloom.site.survey.SurveyWords}.
 */
package yardloom.site.survey;
