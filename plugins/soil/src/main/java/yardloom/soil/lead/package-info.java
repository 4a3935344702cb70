/** Whether the soil holds too much lead. Start with {@link yardloom.soil.lead.LeadCheck}. */
package yardloom.soil.lead;
