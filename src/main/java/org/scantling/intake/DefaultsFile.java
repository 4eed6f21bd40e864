package org.scantling.intake;

/** The keys of the file of defaults. */
record DefaultsFile(
    @Entry(
            kind = EntryKind.WORD,
            words = {"imperial", "metric"},
            exception = true)
        String units,
    @Entry(exception = true) String yard,
    @Entry(exception = true) String prices,
    @Entry(exception = true) String houseRules) {}
