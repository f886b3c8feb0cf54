/** What lists, suggestions and a history are read from, set beside the entries themselves. */
package org.tenthwise.app.history;
