/** Plan files: text to raw steps, raw steps to a plan or to every problem found, and which plans there are. */
module org.tenthwise.checklists {
    requires transitive org.tenthwise.model;
    requires org.tomlj;

    provides org.tenthwise.model.words.Vocabulary with
            org.tenthwise.checklists.rules.ChecklistVocabulary;

    // the names of columns are read by the tables of the model
    opens org.tenthwise.checklists.drafting to
            org.tenthwise.model;

    exports org.tenthwise.checklists.drafting;
    exports org.tenthwise.checklists.format;
    exports org.tenthwise.checklists.editing;
    exports org.tenthwise.checklists.rules;
    exports org.tenthwise.checklists.catalogue;
    exports org.tenthwise.checklists.materials;
}
