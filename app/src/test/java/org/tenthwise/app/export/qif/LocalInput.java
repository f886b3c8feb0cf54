package org.tenthwise.app.export.qif;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.w3c.dom.ls.LSInput;

/** A schema that another imports by an address on the net, from a file instead. */
record LocalInput(Path file) implements LSInput {

    @Override
    public InputStream getByteStream() {
        try {
            return Files.newInputStream(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String getSystemId() {
        return file.toUri().toString();
    }

    @Override
    public Reader getCharacterStream() {
        return null;
    }

    @Override
    public void setCharacterStream(Reader characterStream) {}

    @Override
    public void setByteStream(InputStream byteStream) {}

    @Override
    public String getStringData() {
        return null;
    }

    @Override
    public void setStringData(String stringData) {}

    @Override
    public void setSystemId(String systemId) {}

    @Override
    public String getPublicId() {
        return null;
    }

    @Override
    public void setPublicId(String publicId) {}

    @Override
    public String getBaseURI() {
        return null;
    }

    @Override
    public void setBaseURI(String baseUri) {}

    @Override
    public String getEncoding() {
        return null;
    }

    @Override
    public void setEncoding(String encoding) {}

    @Override
    public boolean getCertifiedText() {
        return false;
    }

    @Override
    public void setCertifiedText(boolean certifiedText) {}
}
