/**
 * A list of characteristics to the draft of a plan: columns by their names, a line each to a table of the plan or to
 * the reason why there is none. What the list does not say is left open, never made up.
 */
package org.tenthwise.checklists.drafting;
