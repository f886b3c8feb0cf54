/**
 * Series over parts: one characteristic from part to part in the order they were made, broken wherever something else
 * changed, and what so many parts show and do not show. Works without a screen; every figure comes out of the same sums
 * as those of the batch.
 */
package org.tenthwise.app.series;
