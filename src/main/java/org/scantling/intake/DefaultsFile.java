package org.scantling.intake;

/** The keys of the file of defaults. */
record DefaultsFile(
    @Entry(
            says = "units of the answers",
            kind = EntryKind.WORD,
            words = {"imperial", "metric"},
            exception = true)
        String units,
    @Entry(says = "the yard's own list", exception = true) String yard,
    @Entry(says = "folder of the house's own table rows", exception = true) String houseRules) {}
