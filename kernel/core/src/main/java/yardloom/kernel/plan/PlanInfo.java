package yardloom.kernel.plan;

import yardloom.kernel.unit.UnitSystem;

/**
 * What stands in the title block. All of it is input; no clock or account is read.
 *
 * @param id lower-case name used for the output folder
 * @param date the date of issue as the author writes it, may be empty
 */
public record PlanInfo(
    String id,
    String title,
    String client,
    String author,
    String date,
    String revision,
    UnitSystem units,
    String currency) {}
