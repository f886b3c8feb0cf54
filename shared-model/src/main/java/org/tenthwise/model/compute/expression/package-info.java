/** What is worked out of several sizes: an expression in ordinary notation, read, checked and taken over ranges. */
package org.tenthwise.model.compute.expression;
