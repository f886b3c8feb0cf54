/** Plan files: text to raw steps, raw steps to a plan or to every problem found, and which plans there are. */
module org.tenthwise.checklists {
    requires transitive org.tenthwise.model;
    requires org.tomlj;

    provides org.tenthwise.model.words.Vocabulary with
            org.tenthwise.checklists.rules.ChecklistVocabulary;

    exports org.tenthwise.checklists.drafting;
    exports org.tenthwise.checklists.editing;
    exports org.tenthwise.checklists.rules;
    exports org.tenthwise.checklists.catalogue;
    exports org.tenthwise.checklists.materials;
}
