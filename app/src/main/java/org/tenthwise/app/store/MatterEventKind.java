package org.tenthwise.app.store;

import org.tenthwise.model.run.MatterSettled;

/** How a signature for an open matter is written and read. */
final class MatterEventKind {

    static final EventKind<MatterSettled> MATTER_SETTLED = new EventKind<>(
            "matter-settled",
            15,
            MatterSettled.class,
            (settled, to) -> to.put("kind", settled.matter().kind())
                    .put("run", settled.matter().run())
                    .put("about", settled.matter().about())
                    .put("rests", settled.matter().rests())
                    .put("signed-by", settled.signedBy())
                    .put("words", settled.words())
                    .put("document", settled.document()),
            from -> new MatterSettled(
                    new MatterSettled.SettledMatter(
                            from.text("kind"), from.text("run"), from.text("about"), from.text("rests")),
                    from.text("signed-by"),
                    from.text("words"),
                    from.text("document")));

    private MatterEventKind() {}
}
