/** Radii, dovetails, keyways and flats: what is read over rolls and pins, and what a drawing gives. */
package org.tenthwise.app.sums.profile;
