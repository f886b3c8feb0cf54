/**
 * The record of a run, finished or not: what it is called, the part, every characteristic of the plan with its size,
 * where it lies and its verdict; and its way out as a file.
 */
package org.tenthwise.app.ui.record;
