/**
 * Another gauge for the step in hand: one the shop has used, or the mark of one it has not. Null is not passed and not
 * returned.
 */
package org.tenthwise.app.ui.gauge;
