package org.tenthwise.app.backup;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.text.Dates;
import org.tenthwise.model.words.Words;

/** What there is to say about the backups, a sentence each. */
public final class BackupWords {

    private final Words words;
    private final ZoneId zone;

    /** @param zone of the place */
    public BackupWords(Words words, ZoneId zone) {
        this.words = words;
        this.zone = zone;
    }

    public List<String> say(Backups backups) {
        BackupState state = backups.state();
        BackupSettings settings = backups.settings();
        List<String> said = new ArrayList<>();
        said.add(state.made()
                .map(made -> words.say(
                        "about.backups.made",
                        new Dates(words).moment(made.atZone(zone).toOffsetDateTime())))
                .orElseGet(() -> words.say("about.backups.none")));
        state.failure().ifPresent(why -> said.add(words.say("about.backups.failed", why)));
        said.add(words.say("about.backups.beside", backups.beside(), settings.kept()));
        said.add(settings.folder()
                .map(folder -> words.say("about.backups.folder", folder))
                .orElseGet(() -> words.say("about.backups.no-folder")));
        return said;
    }
}
