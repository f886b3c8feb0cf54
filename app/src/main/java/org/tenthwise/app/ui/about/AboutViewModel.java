package org.tenthwise.app.ui.about;

import java.util.List;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.Known;

/** What there is to say about the program. Nothing of it changes while it is shown. */
public final class AboutViewModel {

    /** A heading and what stands under it, a paragraph each. */
    public record Section(String heading, List<String> paragraphs) {
        public Section {
            paragraphs = List.copyOf(paragraphs);
        }
    }

    private final AboutFacts facts;
    private final Words words;

    public AboutViewModel(AboutFacts facts, Words words) {
        this.facts = facts;
        this.words = words;
    }

    /** What can hurt, first of all. */
    public Section cautions() {
        return new Section(words.say("about.cautions"), Known.ready(words, "about.cautions.all"));
    }

    public List<Section> sections() {
        return List.of(
                new Section(words.say("about.program"), List.of(words.say("about.version", facts.version()),
                        words.say("about.licence"), words.say("about.no-warranty"))),
                new Section(words.say("about.data"), List.of(words.say("about.data-at", facts.dataAt()),
                        words.say("about.plans-at", facts.plansAt()), words.say("about.data-kept"))),
                new Section(words.say("about.libraries"), Library.all().stream().map(library ->
                        words.say("about.library", library.name(), library.serves(), library.licence())).toList()));
    }
}
