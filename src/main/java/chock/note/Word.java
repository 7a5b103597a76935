package chock.note;

/**
 * One word of a note.
 *
 * @param text in small letters
 * @param stem without the s of a plural, by which it is compared
 * @param guessed whether the stem is that of the nearest word known, since the word itself is not
 */
record Word(String text, String stem, boolean guessed) { }
