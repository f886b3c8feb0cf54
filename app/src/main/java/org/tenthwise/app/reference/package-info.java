/**
 * Published cases that come along with the program, and what its sums make of them. A case is a line of a file a topic;
 * it goes through the same sums as a batch or the bench, and each figure printed in its source is set beside the figure
 * worked out. What a source prints wrong, or by another convention, is set aside with the reason; what no sum can run
 * is left out with the reason. Knows no screen; nothing is ever null.
 */
package org.tenthwise.app.reference;
