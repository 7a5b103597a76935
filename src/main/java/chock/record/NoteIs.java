package chock.record;

/** What the writer of a note says that it is. */
public enum NoteIs {
    /** Nothing is wrong. */ REMARK,
    /** Something is wrong. */ DEFECT
}
