package org.tenthwise.model.compute.expression;

/** What the names of an expression stand for. */
interface Names<T> {

    T size(String name);

    /** Of the sizes at the places of {@code name}. */
    T over(Function function, String name);
}
