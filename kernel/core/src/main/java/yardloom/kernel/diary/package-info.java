/**
 * What is to be done on which days, for writers of calendars. Start with {@link
 * yardloom.kernel.diary.DiaryEntry}.
 */
package yardloom.kernel.diary;
