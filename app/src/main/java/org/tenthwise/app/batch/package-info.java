/**
 * The sums in batch: a stream of lines goes in, a line for each line comes out, in the same order. Whatever a line
 * holds, it is answered or refused in words, and the next one is read; only a stream that breaks ends the work. Nothing
 * is ever null.
 */
package org.tenthwise.app.batch;
