package org.tenthwise.app.command;

import java.io.InputStream;
import java.io.OutputStream;

/** Where a batch comes from and where its answers go: bytes, without anything between that would hide a failure. */
public record Streams(InputStream in, OutputStream out) {}
