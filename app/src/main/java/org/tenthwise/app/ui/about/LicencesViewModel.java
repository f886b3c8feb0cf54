package org.tenthwise.app.ui.about;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.model.words.Words;

/** The licences of the program and of each library, and the one that is read. */
public final class LicencesViewModel {

    /**
     * One work and what its makers want said.
     *
     * @param licence SPDX identifier
     */
    public record Work(String name, String licence, List<String> paragraphs) {
        public Work {
            paragraphs = List.copyOf(paragraphs);
        }
    }

    private final List<Work> works;
    private final ReadOnlyObjectWrapper<Work> chosen;

    public LicencesViewModel(Words words) {
        List<Work> all = new ArrayList<>();
        all.add(new Work(words.say("licences.ours"), "GPL-3.0-or-later", LicenceText.paragraphs(LicenceText.OURS)));
        Library.all().forEach(library -> all.add(new Work(library.name(), library.licence(), texts(library))));
        works = List.copyOf(all);
        chosen = new ReadOnlyObjectWrapper<>(works.get(0));
    }

    /** Our own first. */
    public List<Work> works() {
        return works;
    }

    public ReadOnlyObjectProperty<Work> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    public void choose(Work work) {
        chosen.set(work);
    }

    private static List<String> texts(Library library) {
        return library.texts().stream()
                .flatMap(text -> LicenceText.paragraphs(text).stream())
                .toList();
    }
}
