/**
 * Plan files: text to raw steps, raw steps to a plan or to every problem found, and which plans there are.
 */
module org.tenthwise.checklists {
    requires transitive org.tenthwise.model;
}
