package org.tenthwise.checklists.catalogue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.plan.DrawingFile;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/**
 * Where plans are made and changed: a folder of plans, with a draft beside each that is worked on. A draft becomes the
 * next issue of its plan once nothing in it is open; the text of the issue before is kept in a folder of its own.
 */
public final class PlanDesk {

    static final String PLAN = ".toml";
    static final String DRAFT = ".draft.toml";
    private static final String ISSUES = "issues";
    private static final String ISSUE = "issue";

    private final PlanReader reader = new PlanReader();
    private final Path folder;

    /** @param folder need not be there before the first draft is kept */
    public PlanDesk(Path folder) {
        this.folder = folder.toAbsolutePath();
    }

    /**
     * Why there is another issue of a plan.
     *
     * @param approvedBy another person than {@code by}; absent where nobody approved it
     * @param affected what a partial check takes in, as a person confirmed it; absent where nobody said
     */
    public record Why(
            String reason, String by, Optional<String> approvedBy, LocalDate on, Optional<List<String>> affected) {}

    /** Where the plans lie, and what is read for one. */
    public Path folder() {
        return folder;
    }

    /** Names of all plans and drafts, without the end of the file name. */
    public List<String> names() throws IOException {
        Set<String> names = new TreeSet<>(named(folder, PlanFolder::isPlanFile, PLAN));
        names.addAll(drafts());
        return List.copyOf(names);
    }

    /** Names that the issues in force before are {@linkplain #open opened} by. */
    public List<String> issuesBefore() throws IOException {
        return named(folder.resolve(ISSUES), PlanFolder::isPlanFile, PLAN).stream()
                .map(name -> ISSUES + "/" + name)
                .toList();
    }

    /** Names of those that are worked on. */
    public List<String> drafts() throws IOException {
        return named(folder, file -> file.getFileName().toString().endsWith(DRAFT), DRAFT);
    }

    /** Names of the files that may be pages of a drawing. */
    public List<String> drawings() throws IOException {
        return named(folder, file -> DrawingFile.canBe(file.getFileName().toString()), "");
    }

    private static List<String> named(Path in, Predicate<Path> wanted, String end) throws IOException {
        if (!Files.isDirectory(in)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(in)) {
            return all.filter(wanted)
                    .map(file -> file.getFileName().toString())
                    .map(name -> name.substring(0, name.length() - end.length()))
                    .sorted()
                    .toList();
        }
    }

    /** The draft of that name; where there is none, the plan in force; absent where there is neither, or no TOML. */
    public Optional<PlanText> open(String name) throws IOException {
        Optional<String> draft = text(folder.resolve(name + DRAFT));
        return (draft.isPresent() ? draft : text(folder.resolve(name + PLAN))).flatMap(PlanText::of);
    }

    /** The text of the plan in force; absent where there is none yet, or it is no TOML. */
    public Optional<PlanText> inForce(String name) throws IOException {
        return text(folder.resolve(name + PLAN)).flatMap(PlanText::of);
    }

    /** Keeps a draft, so that nothing of the work on it is lost; it is there whole or as it was. */
    public void keep(String name, PlanText draft) throws IOException {
        write(folder.resolve(name + DRAFT), draft.text());
    }

    public void throwAway(String name) throws IOException {
        Files.deleteIfExists(folder.resolve(name + DRAFT));
    }

    /**
     * Makes a draft the plan in force, under the next issue.
     *
     * @throws Refused if something is open in it, or the plan was issued anew since the draft was begun
     */
    public Plan issue(String name, PlanText draft, Why why) throws IOException {
        Path inForce = folder.resolve(name + PLAN);
        Optional<String> before = text(inForce);
        Optional<String> issueBefore = before.flatMap(PlanText::of).map(PlanDesk::issueOf);
        String issueOfDraft = issueOf(draft);
        if (issueBefore.filter(issue -> !issue.equals(issueOfDraft)).isPresent()) {
            throw new Refused("desk.issued-since", name, issueBefore.get());
        }
        String next = before.isPresent() ? IssueNumber.after(issueOfDraft) : issueOfDraft;
        PlanText issued = issued(draft, next, why);
        if (!(reader.read(issued.text()) instanceof PlanReading.Good good)) {
            throw new Refused("desk.open-points");
        }
        if (before.isPresent()) {
            write(folder.resolve(fileOfIssue(name, issueOfDraft)), before.get());
        }
        write(inForce, issued.text());
        throwAway(name);
        return good.plan();
    }

    private static PlanText issued(PlanText draft, String next, Why why) {
        TableText entry = TableText.ofList("issued")
                .with(ISSUE, TomlValue.text(next))
                .with("reason", TomlValue.text(why.reason()))
                .with("by", TomlValue.text(why.by()));
        TableText approved = why.approvedBy()
                .map(second -> entry.with("approved_by", TomlValue.text(second)))
                .orElse(entry)
                .with("on", TomlValue.text(why.on().toString()));
        TableText whole = why.affected()
                .map(called -> approved.with(
                        "affected",
                        TomlValue.list(called.stream().map(TomlValue::text).toList())))
                .orElse(approved);
        return draft.withHead(head -> head.with(ISSUE, TomlValue.text(next))).withOneMore("issued", whole);
    }

    /** The templates that checks are added from here. */
    public TemplateShelf templates() {
        return new TemplateShelf(folder);
    }

    private static String issueOf(PlanText plan) {
        return plan.head().says(ISSUE).orElse("");
    }

    /** Where an issue is kept that is not in force any more, in the folder of plans. */
    static String fileOfIssue(String name, String issue) {
        return "%s/%s-issue-%s%s".formatted(ISSUES, name, issue.replaceAll("[^A-Za-z0-9._-]", "_"), PLAN);
    }

    private static Optional<String> text(Path file) throws IOException {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        FileText text = FileText.of(file);
        if (text instanceof FileText.Unreadable unreadable) {
            throw new Refused(
                    Message.of("desk.unreadable", file.getFileName(), Message.ofValue("file", unreadable.why())));
        }
        return Optional.of(((FileText.Readable) text).text());
    }

    static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Path making = file.resolveSibling(file.getFileName() + ".new");
        Files.writeString(making, text);
        try (FileChannel channel = FileChannel.open(making, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
        Files.move(making, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }
}
