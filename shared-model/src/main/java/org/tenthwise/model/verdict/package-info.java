/** What the limits say about one computed size, in exact decimals towards the limits. */
package org.tenthwise.model.verdict;
