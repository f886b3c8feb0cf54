/**
 * One file that hands over all there is of a run, of a part number or of a period: records in every format, entries,
 * plans, and a manifest that the station's key signs. In go a store and the key beside it; out comes the file, or, from
 * a file, what it holds and the first thing that is wrong with it.
 */
package org.tenthwise.app.bundle;
