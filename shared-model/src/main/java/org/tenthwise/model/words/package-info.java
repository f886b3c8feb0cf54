/**
 * Words as data: every sentence a person reads is a key with values. What is to be said travels as a
 * {@link org.tenthwise.model.words.Message}, what is refused as a {@link org.tenthwise.model.words.Refused}; only
 * {@link org.tenthwise.model.words.Words} makes sentences of them. Each module keeps its texts beside its
 * {@link org.tenthwise.model.words.Vocabulary}.
 */
package org.tenthwise.model.words;
