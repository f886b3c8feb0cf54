package org.tenthwise.app.device;

import com.gluonhq.attach.storage.StorageService;
import com.gluonhq.attach.util.Services;
import java.io.File;
import java.nio.file.Path;

/** The storage the device gives to an app; folders in the person's home where it gives none. */
public final class AttachStorage implements Storage {

    private static final String OWN = "tenthwise";
    private static final String DOCUMENTS = "Documents";

    private final Path home;

    /** @param home the person's home folder */
    public AttachStorage(Path home) {
        this.home = home;
    }

    @Override
    public Path folder() {
        return Services.get(StorageService.class)
                .flatMap(StorageService::getPrivateStorage)
                .map(File::toPath)
                .map(shared -> shared.resolve(OWN))
                .orElseGet(() -> home.resolve("." + OWN));
    }

    @Override
    public Path records() {
        return Services.get(StorageService.class)
                .flatMap(service -> service.getPublicStorage(DOCUMENTS))
                .map(File::toPath)
                .orElseGet(() -> home.resolve(DOCUMENTS))
                .resolve("Tenthwise");
    }
}
