/**
 * The first-article report: one or several runs of one part number joined, characteristic by characteristic, with what
 * still stands against calling it complete.
 */
package org.tenthwise.model.firstarticle;
