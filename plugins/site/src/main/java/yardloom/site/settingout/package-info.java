/**
 * How the plan gets onto the ground: two tapes to every corner. Start with {@link
 * yardloom.site.settingout.SettingOut}.
 */
package yardloom.site.settingout;
