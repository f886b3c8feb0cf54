/**
 * Tables of a shop as files: lists of characteristics, for whoever makes the draft of a plan of one, and figures of
 * reports.
 */
package org.tenthwise.app.drafting;
