package org.tenthwise.app.export.qif;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.RecordFormat;

/**
 * The record as QIF 3.0 results (ANSI/DMSC QIF 3.0, ISO 23952:2020), for whoever takes measured characteristics into a
 * program: UTF-8, one document a run, valid by the schemas of the standard.
 *
 * <p>Times are those of the entries and identifiers are made of the head of the run, so the same state of a run gives
 * the same bytes and any later one another identifier.
 */
public final class QifRecord implements RecordFormat {

    @Override
    public String extension() {
        return "qif";
    }

    @Override
    public String mediaType() {
        return "application/xml";
    }

    @Override
    public void write(Evidence evidence, OutputStream out) throws IOException {
        Writer writer = new OutputStreamWriter(out, UTF_8);
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(writer);
            writer.write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
            QifDocument.of(evidence).write(xml, 0);
            xml.flush();
            writer.write("\n");
            writer.flush();
        } catch (XMLStreamException e) {
            throw new IOException(e);
        }
    }
}
